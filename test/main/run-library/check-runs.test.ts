import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { checkRuns, createRunLibrary, type FileLayer, nodeFileLayer } from '#main';
import { encodeRecord, firstPreviousChecksum, type LogBody } from '#shared-core';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runId = '20250314T101503Z';

/** What the library and the check say of the runs in a folder: which there are, and why one can't be read. */
async function said(runsFolder: string, files: FileLayer = nodeFileLayer) {
  const { clock } = createManualTime();
  const library = createRunLibrary({ files, clock, runsFolder, mayWrite: () => false });
  const listed = await library.list();
  const byLibrary = listed.ok
    ? listed.value.map((line) => [line.runId, line.unreadable?.message ?? null])
    : listed.error;
  const byCheck: unknown[] = [];
  for await (const check of checkRuns(files, runsFolder)) {
    expect(check.state).toBe(check.problem === null ? 'whole' : 'unreadable');
    byCheck.push([check.runId, check.problem]);
  }
  return { byLibrary, byCheck };
}

async function folderOf(files: Readonly<Record<string, string>>, name = runId) {
  const runsFolder = await temporaryFolder();
  await mkdir(path.join(runsFolder, name));
  for (const [file, text] of Object.entries(files)) {
    await writeFile(path.join(runsFolder, name, file), text, 'latin1');
  }
  return runsFolder;
}

const { line: headerLine } = encodeRecord(
  { kind: 'header', header: logHeader(runId) },
  { seq: 0, monoS: 0, wallMs: 0 },
  firstPreviousChecksum,
);
const both = (...runs: readonly (readonly [string, string | null])[]) => ({
  byLibrary: runs,
  byCheck: runs,
});

test('of a run whose log has gone the check tells what the library tells, even where a copy of its header is left', async () => {
  const noLog = both([runId, 'There is no run log in this folder.']);
  expect(await said(await folderOf({ 'notes.txt': 'kept' }))).toEqual(noLog);
  expect(await said(await folderOf({ 'labels.jsonl': headerLine }))).toEqual(noLog);
  expect(await said(await folderOf({ 'run.jsonl': headerLine }))).toEqual(both([runId, null]));
});

test('what the library does not take for a run the check does not take for one either', async () => {
  expect(await said(await folderOf({}))).toEqual(both());
  expect(await said(await folderOf({ 'notes.txt': '' }, 'worksheets'))).toEqual(both());
  expect(await said(await folderOf({ 'run.jsonl': headerLine }, 'trash'))).toEqual(both());
});

test('of a file that the disk does not give both tell what the system said', async () => {
  const bySystem: FileLayer = {
    ...nodeFileLayer,
    read: async (target) => ({
      ok: false,
      error: { kind: 'failed', path: target, message: 'EIO: i/o error, read' },
    }),
  };
  const runsFolder = await folderOf({ 'run.jsonl': headerLine });
  expect(await said(runsFolder, bySystem)).toEqual(both([runId, 'EIO: i/o error, read']));
});

test('of a run that cannot be read nothing is told but why', async () => {
  const runsFolder = await folderOf({ 'notes.txt': 'kept' });
  const checks = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  expect(checks).toEqual([
    {
      runId,
      state: 'unreadable',
      readings: 0,
      missingRecords: 0,
      unknownRecords: 0,
      damage: [],
      torn: [],
      timeDoubts: [],
      lost: [],
      unread: [],
      closed: [],
      problem: 'There is no run log in this folder.',
    },
  ]);
});

test('runs are checked oldest first, however the disk lists them', async () => {
  const runsFolder = await folderOf({ 'run.jsonl': headerLine });
  const runIds = [runId, '20250315T090000Z', '20250316T090000Z'];
  for (const later of runIds.slice(1)) {
    await mkdir(path.join(runsFolder, later));
    await writeFile(path.join(runsFolder, later, 'run.jsonl'), headerLine, 'latin1');
  }
  for (const order of [runIds, runIds.toReversed()]) {
    const list: FileLayer['list'] = async (at) =>
      at === runsFolder
        ? { ok: true, value: order.map((name) => ({ name, isFolder: true })) }
        : nodeFileLayer.list(at);
    const checked: string[] = [];
    for await (const check of checkRuns({ ...nodeFileLayer, list }, runsFolder)) {
      checked.push(check.runId);
    }
    expect(checked).toEqual(runIds);
  }
});

/** Lines of one file, each chained to the one before and numbered from `firstSeq`. */
function linesOf(bodies: readonly LogBody[], firstSeq: number): string {
  let previous = firstPreviousChecksum;
  return bodies
    .map((body, index) => {
      const stamp = { seq: firstSeq + index, monoS: index, wallMs: 0 };
      const { line, checksum } = encodeRecord(body, stamp, previous);
      previous = checksum;
      return line;
    })
    .join('');
}

const header = logHeader(runId);
const reading = (timeS: number): LogBody => ({ kind: 'readings', readings: [[timeS, 'head', 20]] });

test('a run of which one of several files has gone is damaged, though every byte left of it is whole', async () => {
  const runsFolder = await folderOf({
    'run.jsonl': linesOf([{ kind: 'header', header }, reading(1)], 0),
    'run-3.jsonl': linesOf(
      [{ kind: 'segment', segment: 3, because: 'EIO', header }, reading(9)],
      8,
    ),
  });
  const checks = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  expect(checks).toMatchObject([{ state: 'damaged', missingRecords: 7, damage: [], lost: [] }]);
});

test('readings that found no room are told of a run that is whole, by where they were lost', async () => {
  const bodies: LogBody[] = [
    { kind: 'header', header },
    reading(1),
    { kind: 'dropped', timeS: 9, readings: 3, fromS: 6, toS: 8 },
    { kind: 'dropped', timeS: 15, readings: 2, fromS: 12, toS: 14, where: 'disk' },
    { kind: 'dropped', timeS: 16, readings: 4, fromS: 2, toS: 15, where: 'probe-process' },
    { kind: 'end', timeS: 20, how: 'clean' },
  ];
  const runsFolder = await folderOf({ 'run.jsonl': linesOf(bodies, 0) });
  const checks = [];
  for await (const check of checkRuns(nodeFileLayer, runsFolder)) checks.push(check);
  expect(checks).toMatchObject([
    {
      state: 'whole',
      lost: [
        { where: 'disk', readings: 5, fromS: 6, toS: 14 },
        { where: 'probe-process', readings: 4, fromS: 2, toS: 15 },
      ],
    },
  ]);
});
