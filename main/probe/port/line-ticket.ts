import { lstatSync, realpathSync } from 'node:fs';

/** Names of pseudo-terminals on Linux (`/dev/pts/4`) and macOS (`/dev/ttys004`); no serial port has such. */
export function isPseudoTerminalName(path: string): boolean {
  return /^\/dev\/(?:pts\/|ttys)\d+$/.test(path);
}

/**
 * Tells one pseudo-terminal from the next that gets its number: null for a port that is none. A number
 * is given to the next program that wants a terminal, perhaps somebody's command line, so once such a
 * line has ended only a link that was made anew may be opened again.
 */
export function lineTicket(path: string): string | null {
  try {
    if (!isPseudoTerminalName(realpathSync(path))) return null;
    const entry = lstatSync(path);
    return entry.isSymbolicLink() ? `${path} ${entry.ino} ${entry.ctimeMs}` : path;
  } catch {
    return null;
  }
}
