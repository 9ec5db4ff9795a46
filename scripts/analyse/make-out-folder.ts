import { mkdtemp, rmdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { nodeFileLayer } from '#main';
import { fail, type Result } from '#shared-core';

/**
 * Makes the folder for the pack, or says why that can't be. What stands nearest is tried first: where
 * the system lets nobody add a folder, as in /proc, Node's recursive making never comes back.
 */
export async function makeOutFolder(folder: string): Promise<Result<void, string>> {
  const standing = await nearestStanding(path.resolve(folder));
  try {
    await rmdir(await mkdtemp(path.join(standing, '.trial-')));
  } catch (error) {
    return fail(`"${folder}" can't be written: ${error instanceof Error ? error.message : error}`);
  }
  const made = await nodeFileLayer.makeFolder(folder);
  return made.ok ? made : fail(`"${folder}" can't be written: ${made.error.message}`);
}

async function nearestStanding(place: string): Promise<string> {
  const above = path.dirname(place);
  if (above === place) return place;
  const found = await stat(place).catch(() => null);
  return found === null ? nearestStanding(above) : place;
}
