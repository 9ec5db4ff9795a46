import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { checkedLine } from '#shared-core';
import { ask, setUpSession } from '../support/session-bench.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const files = {
  'kept-rigs.json': '{"format":"still-head-rigs","version":9,"shelves":[]}',
  'known-probes.json': '{"version":1,',
  'ferment-20260301T090000Z.jsonl': checkedLine({
    kind: 'begun',
    format: 'still-head-ferment-log',
    version: 7,
  }).line,
  'ferment-20260302T090000Z.jsonl': 'torn\n',
  'warmth-20260301T090000Z.jsonl': checkedLine({
    kind: 'keep',
    format: 'still-head-ferment-warmth',
    version: 2,
  }).line,
};

test('of what was kept and cannot be read as it should, each file is told by name, and none is changed', async () => {
  const runsFolder = await temporaryFolder();
  for (const [name, text] of Object.entries(files)) {
    await writeFile(path.join(runsFolder, name), text);
  }
  const { session } = await setUpSession({ runsFolder });
  expect(await ask(session, 'kept-files/doubtful', {})).toEqual({
    files: [
      { name: 'kept-rigs.json', holds: 'rigs', state: 'newer' },
      { name: 'known-probes.json', holds: 'probes', state: 'not-understood' },
      { name: 'ferment-20260301T090000Z.jsonl', holds: 'ferment', state: 'newer' },
      { name: 'ferment-20260302T090000Z.jsonl', holds: 'ferment', state: 'not-understood' },
      { name: 'warmth-20260301T090000Z.jsonl', holds: 'ferment', state: 'newer' },
    ],
  });
  expect(await session.handle('kept-files/doubtful', {}, { mayCommand: false })).toMatchObject({
    error: { kind: 'viewer-may-not-command' },
  });
  for (const [name, text] of Object.entries(files)) {
    expect(await readFile(path.join(runsFolder, name), 'utf8')).toBe(text);
  }
});

test('where all can be read, nothing is told', async () => {
  const { session } = await setUpSession();
  expect(await ask(session, 'kept-files/doubtful', {})).toEqual({ files: [] });
});
