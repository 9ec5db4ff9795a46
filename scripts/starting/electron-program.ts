import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

/**
 * The Electron program in `node_modules`, or null when its runtime was never fetched. Reads what the
 * package's own installer wrote; requiring the package instead would start a download.
 */
export function electronProgram(packageFolder: string): string | null {
  const pathFile = path.join(packageFolder, 'path.txt');
  if (!existsSync(pathFile)) return null;
  const program = path.join(packageFolder, 'dist', readFileSync(pathFile, 'utf8'));
  return existsSync(program) ? program : null;
}
