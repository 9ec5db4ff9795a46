/**
 * The translator of our sources keeps what it has translated in a folder of the system's for temporary files, and runs what it finds
 * there. On a shared computer somebody else may have put that folder there first. Plain JavaScript because it must run before
 * anything is translated.
 */
import { lstatSync, mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';

/**
 * Makes sure that only this user can have put anything into the translator's folder; without that nothing is kept there and nothing
 * run from there.
 * @param {string} temporaryFolder
 * @param {Record<string, string | undefined>} environment
 */
export function keepCachePrivate(temporaryFolder = tmpdir(), environment = process.env) {
  const userId = process.getuid?.();
  // On Windows each user has a folder for temporary files.
  if (userId === undefined) return;
  const folder = path.join(temporaryFolder, `tsx-${userId}`);
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch {
    // There is one already; whose it is is looked at now.
  }
  if (!isOwn(folder, userId)) environment.TSX_DISABLE_CACHE = '1';
}

/**
 * @param {string} folder
 * @param {number} userId
 */
function isOwn(folder, userId) {
  const entry = lstatSync(folder, { throwIfNoEntry: false });
  return entry?.isDirectory() === true && entry.uid === userId && (entry.mode & 0o022) === 0;
}
