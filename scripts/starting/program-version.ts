import { readFileSync } from 'node:fs';
import path from 'node:path';

/** The version of the program, as its package says. */
export function programVersion(): string {
  const file = path.join(import.meta.dirname, '..', '..', 'package.json');
  return (JSON.parse(readFileSync(file, 'utf8')) as { version: string }).version;
}
