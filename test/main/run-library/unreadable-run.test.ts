import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import {
  createRunLibrary,
  type FileLayer,
  type FileProblem,
  nodeFileLayer,
  readRunSoFar,
} from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = '20250314T101503Z';
const header = logHeader(runId);
const label: LogBody = { kind: 'label', name: 'Pears', notes: 'cloudy' };

function logText(bodies: readonly LogBody[]): string {
  let previous = firstPreviousChecksum;
  const lines = bodies.map((body, seq) => {
    const { line, checksum } = encodeRecord(body, { seq, monoS: seq, wallMs: seq }, previous);
    previous = checksum;
    return line;
  });
  return lines.join('');
}

/** Writes one folder of a library. */
async function write(
  runsFolder: string,
  name: string,
  files: Readonly<Record<string, string>>,
): Promise<void> {
  await mkdir(path.join(runsFolder, name), { recursive: true });
  for (const [file, text] of Object.entries(files)) {
    await writeFile(path.join(runsFolder, name, file), text, 'latin1');
  }
}

const libraryOf = (runsFolder: string, files: FileLayer = nodeFileLayer) =>
  createRunLibrary({ files, clock: createManualTime().clock, runsFolder, mayWrite: () => true });

test('a run whose log has gone is called as it was named last, else as its header says, else by its folder', async () => {
  const lineOf = async (...labels: readonly LogBody[]) => {
    const runsFolder = await temporaryFolder();
    await write(runsFolder, runId, { 'notes.txt': '', 'labels.jsonl': logText(labels) });
    const listed = await libraryOf(runsFolder).list();
    return (
      listed.ok && listed.value.map(({ name, notes, startedAtIso }) => [name, notes, startedAtIso])
    );
  };
  expect([
    await lineOf({ kind: 'header', header }, label),
    await lineOf(label),
    await lineOf({ kind: 'header', header }),
    await lineOf(),
  ]).toEqual([
    [['Pears', 'cloudy', '2025-03-14T10:15:00.000Z']],
    [['Pears', 'cloudy', '2025-03-14T10:15:03.000Z']],
    [['Pear-juice ferment', '', '2025-03-14T10:15:00.000Z']],
    [[runId, '', '2025-03-14T10:15:03.000Z']],
  ]);
});

test('a run whose folder has gone is no line of the library, one whose folder the disk does not open is', async () => {
  const runsFolder = await temporaryFolder();
  await write(runsFolder, runId, { 'run.jsonl': logText([{ kind: 'header', header }]) });
  const whyWhere = async (kind: FileProblem['kind']) => {
    const list: FileLayer['list'] = async (at) =>
      at === runsFolder
        ? nodeFileLayer.list(at)
        : { ok: false, error: { kind, path: at, message: 'simulated' } };
    const listed = await libraryOf(runsFolder, { ...nodeFileLayer, list }).list();
    return listed.ok && listed.value.map(({ unreadable }) => unreadable?.why);
  };
  expect([
    await whyWhere('missing'),
    await whyWhere('read-only'),
    await whyWhere('failed'),
  ]).toEqual([[], ['not-permitted'], ['read-failed']]);
});

test('a table that was taken in is told as such, also where its log has gone or is not given; whatever people call its folder', async () => {
  const runsFolder = await temporaryFolder();
  const imported: LogBody = { kind: 'header', header: { ...header, origin: 'imported' } };
  await write(runsFolder, runId, { 'labels.jsonl': logText([imported]) });
  await write(runsFolder, '20250315T101503Z', {
    'labels.jsonl': logText([{ kind: 'header', header }]),
  });
  await write(runsFolder, 'pears', {
    'run.jsonl': logText([imported]),
    'labels.jsonl': logText([imported]),
  });
  const read: FileLayer['read'] = async (at, offset, length) =>
    path.basename(at) === 'run.jsonl'
      ? { ok: false, error: { kind: 'failed', path: at, message: 'EIO' } }
      : nodeFileLayer.read(at, offset, length);
  const listed = await libraryOf(runsFolder, { ...nodeFileLayer, read }).list();
  expect(
    listed.ok && listed.value.map((line) => [line.runId, line.imported, line.unreadable?.why]),
  ).toEqual([
    ['pears', true, 'read-failed'],
    ['20250315T101503Z', false, 'log-missing'],
    [runId, true, 'log-missing'],
  ]);
});

test('what people keep in the bin beside runs is neither listed nor put back', async () => {
  const runsFolder = await temporaryFolder();
  const log = { 'run.jsonl': logText([{ kind: 'header', header }]) };
  const trash = path.join(runsFolder, 'trash');
  await write(trash, 'old worksheets', log);
  await write(trash, 'worksheets', { 'notes.txt': '' });
  await write(trash, runId, log);
  const library = libraryOf(runsFolder);
  const listed = await library.trashed();
  expect(listed.ok && listed.value.map((line) => line.runId)).toEqual([runId]);
  for (const name of ['old worksheets', 'worksheets']) {
    expect(await library.restore(name)).toEqual({
      ok: false,
      error: { kind: 'run-not-found', runId: name },
    });
  }
  const left = await nodeFileLayer.list(trash);
  expect(left.ok && left.value.map(({ name }) => name).sort()).toEqual(
    [runId, 'old worksheets', 'worksheets'].sort(),
  );
});

test('wherever the disk fails in mid-read, a run is not gone on with as if it were shorter', async () => {
  const runsFolder = await temporaryFolder();
  const text = logText([
    { kind: 'header', header },
    { kind: 'readings', readings: [[1, 'head', 20]] },
  ]);
  await write(runsFolder, runId, { 'run.jsonl': text });
  const folder = path.join(runsFolder, runId);
  const sound = failingFiles(-1);
  expect(await readRunSoFar(sound.files, folder)).toMatchObject({
    ok: true,
    value: { readings: 1 },
  });
  for (const failAt of sound.done().keys()) {
    const found = await readRunSoFar(failingFiles(failAt).files, folder);
    expect([failAt, found]).toMatchObject([failAt, { ok: false, error: { kind: 'failed' } }]);
  }
});
