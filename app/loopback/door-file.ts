import { rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** Browsers that are started anew on a slow computer take their time. */
const keepMs = 60_000;

/**
 * A page that leads to the address, for the eyes of this user alone: every program on the computer may read another's command line,
 * and an address there would let whoever reads it first command the run. It lies among the runs because browsers that are shut into
 * a container see neither temporary nor hidden folders. Answers where it is, or null where it could not be written.
 */
export async function writeDoorFile(folder: string, url: string): Promise<string | null> {
  const file = path.join(folder, 'open-window.html');
  const page =
    '<!doctype html><meta charset="utf-8"><title>Still Head Monitor</title>' +
    `<meta http-equiv="refresh" content="0; url=${url}"><p><a href="${url}">Open the window</a></p>\n`;
  try {
    await rm(file, { force: true });
    await writeFile(file, page, { mode: 0o600, flag: 'wx' });
  } catch {
    return null;
  }
  setTimeout(() => void removeDoorFile(folder), keepMs).unref();
  return file;
}

/** The address in it works once, so nothing is lost with it. */
export async function removeDoorFile(folder: string): Promise<void> {
  await rm(path.join(folder, 'open-window.html'), { force: true }).catch(() => undefined);
}
