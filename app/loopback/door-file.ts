import { readFile, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';

/** Where a fresh address is given, and what must be shown for it. */
export interface Door {
  readonly address: string;
  readonly key: string;
}

/** Where the page lies, whether or not it is there. */
export const doorFileIn = (folder: string) => path.join(folder, 'open-window.html');

/**
 * A page that leads to a window, for the eyes of this user alone: every program on the computer may read another's command line,
 * and an address there would let whoever reads it first command the run. It lies among the runs because browsers that are shut into
 * a container see neither temporary nor hidden folders, and stays for as long as the program runs: who has closed the window opens
 * it again from there. The key is sent in a form, so it is in no address and no history. Answers where it is, or null where it
 * could not be written.
 */
export async function writeDoorFile(folder: string, door: Door): Promise<string | null> {
  const file = doorFileIn(folder);
  try {
    await rm(file, { force: true });
    await writeFile(file, doorPage(door), { mode: 0o600, flag: 'wx' });
  } catch {
    return null;
  }
  return file;
}

/** Removes the page, unless a program that was started later has put its own there. */
export async function removeDoorFile(folder: string, { key }: Door): Promise<void> {
  const found = await readDoorFile(folder);
  if (found?.key === key) await rm(doorFileIn(folder), { force: true }).catch(() => undefined);
}

/** What the page of this folder holds; null where there is none. */
export async function readDoorFile(folder: string): Promise<Door | null> {
  const page = await readFile(doorFileIn(folder), 'utf8').catch(() => '');
  const found = /action="(http:\/\/127\.0\.0\.1:\d+\/[a-z-]+)".*?value="([\w-]+)"/s.exec(page);
  const [, address, key] = found ?? [];
  return address === undefined || key === undefined ? null : { address, key };
}

function doorPage({ address, key }: Door): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><title>Still Head Monitor</title>
<meta name="viewport" content="width=device-width">
<form method="post" action="${address}"><input type="hidden" name="key" value="${key}">
<h1>Still Head Monitor</h1><p><button>Open the window</button></p>
<p>A run that is being recorded goes on and is shown in the new window; a window that is open already goes on watching.</p>
<p>If the browser finds nothing there, the program is closed: start it again.</p></form>
<script>document.forms[0].submit()</script>
`;
}
