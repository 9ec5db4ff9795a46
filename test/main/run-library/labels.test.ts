import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, labelsFile, nodeFileLayer } from '#main';
import { createRandom, encodeRecord, succeed } from '#shared-core';
import {
  addLater,
  type LabelsFile,
  type LaterRecord,
  readLabels,
  startLabels,
} from '../../../main/run-library/labels.ts';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const { clock } = createManualTime();
const named = (name: string): LaterRecord => ({ kind: 'label', name, notes: `${name}, noted` });
const late = (markId: number): LaterRecord => ({
  kind: 'late-mark',
  markId,
  mark: { type: 'liquid-mass', liquid: 'residue', massG: 300 + markId },
});
const correction = {
  startedAtIso: '2025-03-14T09:15:00.000Z',
  reason: 'the clock was an hour ahead',
};

const ofNothing = { header: null, label: null, lateMarks: [], corrections: [], last: null };
const labelsOf = async (folder: string) => {
  const found = await readLabels(nodeFileLayer, folder);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  const { last, ...rest } = found.value;
  return { ...rest, lastSeq: last?.seq ?? null };
};

test('a run that nothing was added to has no labels; a disk that does not answer is no such run', async () => {
  const folder = await temporaryFolder();
  expect(await readLabels(nodeFileLayer, folder)).toEqual(succeed(ofNothing));
  const disk = failingFiles(0);
  expect(await readLabels(disk.files, folder)).toMatchObject({
    ok: false,
    error: { kind: 'failed', path: path.join(folder, 'labels.jsonl') },
  });
});

test('all that is added is found again, the last name counts, and records are numbered on from the header', async () => {
  const folder = await temporaryFolder();
  await startLabels(nodeFileLayer, clock, folder, logHeader());
  await addLater(nodeFileLayer, clock, folder, [named('first'), late(1), late(2)]);
  await addLater(nodeFileLayer, clock, folder, [{ kind: 'correction', correction }]);
  await addLater(nodeFileLayer, clock, folder, [named('second')]);
  expect(await labelsOf(folder)).toEqual({
    header: logHeader(),
    label: { name: 'second', notes: 'second, noted' },
    lateMarks: [1, 2].map((markId) => ({
      kind: 'mark',
      markId,
      mark: { type: 'liquid-mass', liquid: 'residue', massG: 300 + markId },
    })),
    corrections: [correction],
    lastSeq: 5,
  });
  const lines = (await readFile(path.join(folder, 'labels.jsonl'), 'utf8')).trim().split('\n');
  expect(lines.map((line) => JSON.parse(line).seq)).toEqual([0, 1, 2, 3, 4, 5]);
});

test('a record that is damaged is left out, and the others count', async () => {
  const folder = await temporaryFolder();
  await addLater(nodeFileLayer, clock, folder, [named('first'), late(1), named('second')]);
  const file = path.join(folder, 'labels.jsonl');
  const text = await readFile(file, 'latin1');
  await writeFile(file, text.replace('"second"', '"forged"'), 'latin1');
  expect(await labelsOf(folder)).toMatchObject({ label: { name: 'first' }, lateMarks: [{}] });
});

test('wherever the disk fails, that is told, no file stays open, nothing that was kept is lost, and the next record follows', async () => {
  const torn = '{"torn":';
  async function begun() {
    const folder = await temporaryFolder();
    await startLabels(nodeFileLayer, clock, folder, logHeader());
    await addLater(nodeFileLayer, clock, folder, [named('before'), late(1)]);
    const file = path.join(folder, 'labels.jsonl');
    await writeFile(file, (await readFile(file, 'latin1')) + torn, 'latin1');
    return folder;
  }
  const sound = failingFiles(-1);
  const added = [late(2), late(3)];
  expect(await addLater(sound.files, clock, await begun(), added)).toEqual(succeed(undefined));
  const operations = sound.done();
  expect(operations).toEqual(
    expect.arrayContaining(['read', 'createAppend', 'write', 'sync', 'rename']),
  );
  for (const failure of ['refuses', 'takes half'] as const) {
    for (const [failAt, operation] of operations.entries()) {
      if (failure === 'takes half' && operation !== 'write') continue;
      const folder = await begun();
      const disk = failingFiles(failAt, failure);
      const refused = await addLater(disk.files, clock, folder, added);
      expect([failAt, refused, disk.stillOpen()]).toMatchObject([
        failAt,
        { ok: false, error: { kind: failure === 'refuses' ? 'failed' : 'full' } },
        0,
      ]);
      expect(await addLater(nodeFileLayer, clock, folder, [named('after')])).toMatchObject({
        ok: true,
      });
      const { header, label, lateMarks } = await labelsOf(folder);
      expect([header, label?.name, lateMarks[0]?.markId]).toEqual([logHeader(), 'after', 1]);
      // What was refused is not there.
      expect([operation, lateMarks.map(({ markId }) => markId)]).toEqual([operation, [1]]);
    }
  }
});

test('a copy of the header that cannot be begun, written or synced is told, and its file closed', async () => {
  const sound = failingFiles(-1);
  await startLabels(sound.files, clock, await temporaryFolder(), logHeader());
  for (const failAt of sound.done().keys()) {
    const disk = failingFiles(failAt);
    const started = await startLabels(disk.files, clock, await temporaryFolder(), logHeader());
    expect([started.ok, disk.stillOpen()]).toEqual([false, 0]);
  }
});

test('a record is synced, and its name where the file is new, before it counts as kept', async () => {
  const folder = await temporaryFolder();
  const seen: string[] = [];
  const disk = failingFiles(-1);
  const files: FileLayer = {
    ...disk.files,
    syncFolder: async (at) => {
      seen.push(at);
      return disk.files.syncFolder(at);
    },
  };
  await addLater(files, clock, folder, [named('only')]);
  expect(seen).toEqual([folder]);
  expect(disk.done().slice(-5)).toEqual(['write', 'sync', 'sizeBytes', 'rename', 'syncFolder']);
});

/** What a failed sync threw away can be read as long as the computer runs, and stands on no disk. */
test('what is told as kept is on the disk, whatever a program before could not save in front of it', async () => {
  let fails = false;
  const { scheduler } = createManualTime();
  const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, scheduler);
  const folder = '/runs/one';
  const read = async (files: FileLayer) => {
    const found = await readLabels(files, folder);
    return found.ok ? found.value : found;
  };
  expect(await startLabels(disk.files, clock, folder, logHeader())).toEqual(succeed(undefined));
  // As a program leaves it that is killed at a sync that fails.
  const left = await disk.files.openAppend(path.join(folder, labelsFile));
  const { last } = (await read(disk.files)) as LabelsFile;
  const stamp = { seq: 1, monoS: 1, wallMs: 0 };
  const { line } = encodeRecord(named('before'), stamp, last?.checksum ?? '');
  if (!left.ok) throw new Error(left.error.message);
  left.value.write(Buffer.from(line, 'latin1'));
  fails = true;
  expect(await left.value.sync()).toMatchObject({ ok: false });
  expect(await addLater(disk.files, clock, folder, [late(7)])).toMatchObject({ ok: false });
  fails = false;
  expect(await addLater(disk.files, clock, folder, [late(1)])).toEqual(succeed(undefined));
  const kept = await read(disk.files);
  expect(kept).toMatchObject({ label: { name: 'before' }, lateMarks: [{ markId: 1 }] });
  for (let seed = 0; seed < 10; seed += 1) {
    expect(await read(disk.losePower(createRandom(seed)))).toEqual(kept);
  }
});
