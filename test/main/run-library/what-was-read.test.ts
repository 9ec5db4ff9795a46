import { cp, mkdir, readFile, stat, utimes, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { createRunLibrary, type FileLayer, nodeFileLayer, startRecorder } from '#main';
import { createRandom, fail, type LogBody } from '#shared-core';
import { contentsOf, looksOf } from '../../../main/run-library/what-was-read.ts';
import { logHeader } from '../support/log-header.ts';
import { logText } from '../support/log-text.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = '20250314T101500Z';
const reading = (timeS: number): LogBody => ({ kind: 'readings', readings: [[timeS, 'head', 20]] });
const textOf = (endS: number) =>
  logText([
    { kind: 'header', header: logHeader(runId) },
    reading(1),
    { kind: 'end', timeS: endS, how: 'clean' },
  ]);

async function oneRun() {
  const runsFolder = await temporaryFolder();
  const folder = path.join(runsFolder, runId);
  await mkdir(folder);
  const log = path.join(folder, 'run.jsonl');
  await writeFile(log, textOf(3), 'latin1');
  return { runsFolder, folder, log };
}

function open(runsFolder: string, files: FileLayer = nodeFileLayer) {
  const { clock } = createManualTime();
  return createRunLibrary({ files, clock, runsFolder, mayWrite: () => true });
}

async function lineIn(library: ReturnType<typeof open>) {
  const listed = await library.list();
  const line = listed.ok ? listed.value[0] : undefined;
  return line ?? expect.fail('It is listed.');
}

test('a record put in place of another of the same size, and dated like it, shows what it holds', async () => {
  const { runsFolder, log } = await oneRun();
  const before = open(runsFolder);
  expect(await lineIn(before)).toMatchObject({ durationS: 3, readings: 1 });
  const { atime, mtime } = await stat(log);
  await writeFile(log, textOf(8), 'latin1');
  await utimes(log, atime, mtime);
  for (const library of [before, open(runsFolder)]) {
    expect(await lineIn(library)).toMatchObject({ durationS: 8 });
  }
  // One byte, by whatever means.
  await writeFile(log, textOf(8).replace('"head",20]', '"head",21]'), 'latin1');
  await utimes(log, atime, mtime);
  for (const library of [before, open(runsFolder)]) {
    expect(await lineIn(library)).toMatchObject({ readings: 0, damagedRecords: 1 });
  }
});

test('a library that was copied shows its summaries without reading a run through, and keeps them anew', async () => {
  const { runsFolder } = await oneRun();
  await lineIn(open(runsFolder));
  const copied = path.join(await temporaryFolder(), 'copied');
  const stored = path.join(copied, runId, 'summary.json');
  await cp(runsFolder, copied, { recursive: true });
  // Only a stored summary can tell this name.
  const text = await readFile(stored, 'utf8');
  await writeFile(stored, text.replaceAll('Pear-juice ferment', 'From the store'));
  expect((await lineIn(open(copied))).name).toBe('From the store');
  const log = path.join(copied, runId, 'run.jsonl');
  let bytesRead = 0;
  const files: FileLayer = {
    ...nodeFileLayer,
    async read(at, offset, length) {
      const read = await nodeFileLayer.read(at, offset, length);
      if (at === log && read.ok) bytesRead += read.value.length;
      return read;
    },
  };
  expect((await lineIn(open(copied, files))).name).toBe('From the store');
  expect(bytesRead).toBe(20);
  // Another run’s summary is nobody’s, whatever it says of its files.
  await writeFile(stored, text.replaceAll(`"runId": "${runId}"`, '"runId": "another"'));
  expect((await lineIn(open(copied))).name).toBe('Pear-juice ferment');
});

test('after a loss of power a run shows what is left of it, where its file is as long and as old as before', async () => {
  let fails = false;
  const time = createManualTime();
  const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, time.scheduler);
  const setup = { files: disk.files, ...time, folder: `/runs/${runId}`, header: logHeader(runId) };
  const recorder = await startRecorder({ ...setup, onStatus: () => undefined });
  if (!recorder.ok) throw new Error(recorder.error.message);
  fails = true;
  recorder.value.append(reading(1), 1, 'now');
  await time.pass(1);
  fails = false;
  // What is in the system's memory is summarised, and the summary kept.
  expect(await lineIn(open('/runs', disk.files))).toMatchObject({ readings: 1, unsure: true });
  for (let seed = 0; seed < 5; seed += 1) {
    const files = disk.losePower(createRandom(seed));
    expect(await lineIn(open('/runs', files))).toMatchObject({ readings: 0 });
  }
});

test('what a run looks like and what it holds are told of each of its files, and not where the disk does not give one', async () => {
  const { folder } = await oneRun();
  const long = 'x'.repeat(1_048_576);
  await writeFile(path.join(folder, 'labels.jsonl'), long);
  await writeFile(path.join(folder, 'notes.txt'), 'not of the run');
  const looks = await looksOf(nodeFileLayer, folder);
  const end = textOf(3).slice(-20);
  const toldTime = '\\d+ \\d+';
  expect(looks.ok && looks.value).toMatch(
    new RegExp(
      `^labels\\.jsonl: 1048576 ${toldTime} x{20}; run\\.jsonl: ${textOf(3).length} ${toldTime} ${end}$`,
    ),
  );
  const contents = await contentsOf(nodeFileLayer, folder);
  await writeFile(path.join(folder, 'labels.jsonl'), `${long}x`);
  const longer = await contentsOf(nodeFileLayer, folder);
  await writeFile(path.join(folder, 'labels.jsonl'), `y${long}`);
  const other = await contentsOf(nodeFileLayer, folder);
  expect(new Set([contents, longer, other].map((told) => told.ok && told.value)).size).toBe(3);
  expect(contents.ok && contents.value).toMatch(/^labels\.jsonl: 1048576 [0-9a-f]+; run\.jsonl: /);
  for (const kind of ['failed', 'missing'] as const) {
    const refuse = async (at: string) => fail({ kind, path: at, message: 'EIO' } as const);
    const told = [
      await looksOf({ ...nodeFileLayer, stateOf: refuse }, folder),
      await looksOf({ ...nodeFileLayer, read: refuse }, folder),
      await contentsOf({ ...nodeFileLayer, read: refuse }, folder),
    ];
    // A file that has gone meanwhile was one that the recorder took away again.
    expect(told.map((one) => (one.ok ? one.value : one.error.kind))).toEqual(
      kind === 'failed' ? ['failed', 'failed', 'failed'] : ['', '', ''],
    );
  }
});
