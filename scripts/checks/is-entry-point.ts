import process from 'node:process';
import { pathToFileURL } from 'node:url';

/** True when the module with this `import.meta.url` is what Node was asked to run. */
export function isEntryPoint(moduleUrl: string): boolean {
  const started = process.argv[1];
  return started !== undefined && pathToFileURL(started).href === moduleUrl;
}
