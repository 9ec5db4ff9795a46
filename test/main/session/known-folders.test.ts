import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { nodeFileLayer } from '#main';
import { createKnownFolders } from '../../../main/session/known-folders.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const inState = async () => path.join(await temporaryFolder(), 'state', 'known-folders.json');
const stick = (number: number) => `/media/stick-${number}/runs`;

test('the forty folders that were had last are known to the next program, however their path is written', async () => {
  const file = await inState();
  const known = createKnownFolders(nodeFileLayer, file);
  for (let number = 0; number <= 40; number += 1) await known.note(stick(number));
  await known.note(`${stick(40)}/`);
  const next = createKnownFolders(nodeFileLayer, file);
  const told = await Promise.all(
    [stick(0), stick(1), stick(40), `${stick(40)}/../runs`].map(next.has),
  );
  expect(told).toEqual([false, true, true, true]);
});

test('where the file says nothing that is understood no folder is known, and one that is had is noted', async () => {
  const file = await inState();
  await mkdir(path.dirname(file));
  await writeFile(file, '{"format":"still-head-known-folders","ver');
  const known = createKnownFolders(nodeFileLayer, file);
  expect(await known.has(stick(1))).toBe(false);
  await known.note(stick(1));
  expect(await known.has(stick(1))).toBe(true);
});
