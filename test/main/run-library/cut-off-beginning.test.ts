import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import {
  checkRuns,
  createRunLibrary,
  type FileLayer,
  nodeFileLayer,
  startRecorder,
  summariseRun,
} from '#main';
import { createRandom, encodeRecord } from '#shared-core';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const startedMs = Date.UTC(2025, 2, 14, 10, 15, 3);
const runId = '20250314T101503Z';

function libraryOn(files: FileLayer, runsFolder: string) {
  const { clock } = createManualTime();
  return createRunLibrary({ files, clock, runsFolder, mayWrite: () => true });
}

/** Begins a run as a recording does, and records a minute; what was recorded is on the disk. */
async function recordMinute(files: FileLayer, runsFolder: string): Promise<string> {
  const { clock, scheduler } = createManualTime();
  const library = libraryOn(files, runsFolder);
  const made = await library.makeRunFolder(startedMs);
  if (!made.ok) throw new Error(made.error.message);
  const { folder } = made.value;
  const setup = { files, clock, scheduler, folder, onStatus: () => undefined };
  const recorder = await startRecorder({ ...setup, header: logHeader(runId) });
  if (!recorder.ok) throw new Error(recorder.error.message);
  await library.keepHeader(folder, logHeader(runId));
  for (let timeS = 1; timeS <= 60; timeS += 1) {
    recorder.value.append({ kind: 'readings', readings: [[timeS, 'head', 20]] }, timeS, 'soon');
  }
  await recorder.value.close();
  return folder;
}

/** What a real run's record holds, and where its first line ends. */
async function realRecord() {
  const folder = await recordMinute(nodeFileLayer, await temporaryFolder());
  const text = await readFile(path.join(folder, 'run.jsonl'), 'latin1');
  const labels = await readFile(path.join(folder, 'labels.jsonl'), 'latin1');
  return { text, labels, firstLine: text.indexOf('\n') + 1 };
}

/** Why such a run can't be opened, as it is found and after the program has been started on it; null where it can be. */
async function whyWith(files: Readonly<Record<string, string>>) {
  const runsFolder = await temporaryFolder();
  await mkdir(path.join(runsFolder, runId));
  for (const [name, text] of Object.entries(files)) {
    await writeFile(path.join(runsFolder, runId, name), text, 'latin1');
  }
  const why = async () => {
    const listed = await libraryOn(nodeFileLayer, runsFolder).list();
    return listed.ok && listed.value.map(({ unreadable }) => unreadable?.why ?? null).join();
  };
  const found = await why();
  await libraryOn(nodeFileLayer, runsFolder).recoverAll();
  expect(await why()).toBe(found);
  return found;
}

test('a run cut off before its header was saved is told as one of which nothing was recorded, however much of it the disk kept', async () => {
  const { text, firstLine } = await realRecord();
  const zeros = '\0'.repeat(512);
  const left = [0, 1, 9, 100, firstLine - 1].map((bytes) => text.slice(0, bytes));
  const holes = [
    '\0'.repeat(firstLine),
    `${zeros}${text.slice(512, firstLine)}`,
    `${text.slice(0, 512)}${zeros}${text.slice(1024, firstLine)}`,
    `${text.slice(0, firstLine - 100)}${'\0'.repeat(100)}`,
  ];
  for (const beginning of [...left, ...holes]) {
    expect([beginning, await whyWith({ 'run.jsonl': beginning })]).toEqual([
      beginning,
      'nothing-recorded',
    ]);
  }
});

test('of a run that may have held readings nobody is told that nothing was recorded', async () => {
  const { text, labels, firstLine } = await realRecord();
  const damaged = text.replace('"head"', '"pot"').replace('Pear', 'Bear');
  const newer = encodeRecord(
    // @ts-expect-error A later version's.
    { kind: 'header', header: { ...logHeader(runId), version: 99 } },
    { seq: 0, monoS: 0, wallMs: 0 },
    '00000000',
  ).line;
  const records: Readonly<Record<string, Readonly<Record<string, string>>>> = {
    'readings behind a damaged header': { 'run.jsonl': damaged },
    'readings without a header': { 'run.jsonl': text.slice(firstLine) },
    'one reading that was torn': { 'run.jsonl': damaged.slice(0, firstLine + 30) },
    'an hour of zeros': { 'run.jsonl': '\0'.repeat(400_000) },
    'no beginning of a record': { 'run.jsonl': `#${text.slice(1, firstLine)}` },
    'a newer version’s header': { 'run.jsonl': newer },
    'a later file': { 'run.jsonl': '', 'run-2.jsonl': '' },
    'damage that was put aside': { 'run.jsonl': '', 'run.jsonl.torn-at-0': damaged },
    'what was kept once it had begun': { 'run.jsonl': '', 'labels.jsonl': labels.slice(0, 200) },
  };
  for (const [what, files] of Object.entries(records)) {
    expect([what, await whyWith(files)]).toEqual([what, 'header-lost']);
  }
  expect(await whyWith({ 'run.jsonl': '', 'labels.jsonl': labels })).toBe('');
});

test('of a run that had begun, no loss of power leaves it said that nothing was recorded', async () => {
  const found = new Set<string>();
  for (let seed = 0; seed < 60; seed += 1) {
    const disk = createPowerLossDisk(soundDisk, createManualTime().scheduler);
    await recordMinute(disk.files, '/runs');
    const listed = await libraryOn(disk.losePower(createRandom(`${seed}`)), '/runs').list();
    const runs = listed.ok ? listed.value : [];
    found.add(runs.map(({ readings, unreadable }) => `${readings} ${unreadable?.why}`).join());
  }
  expect([...found]).toEqual(['60 undefined']);
});

test('a beginning that was cut off is no damage to whoever checks runs, and says in a sentence what it is', async () => {
  const runsFolder = await temporaryFolder();
  await mkdir(path.join(runsFolder, runId));
  await writeFile(path.join(runsFolder, runId, 'run.jsonl'), '{"seq":0,"pr');
  const checks = [];
  for await (const { state, problem } of checkRuns(nodeFileLayer, runsFolder)) {
    checks.push({ state, problem });
  }
  const message = 'Nothing was recorded of it: it ended while it was being started.';
  expect(checks).toEqual([{ state: 'torn', problem: message }]);
  expect(await libraryOn(nodeFileLayer, runsFolder).page(runId, 0)).toEqual({
    ok: false,
    error: { kind: 'run-unreadable', runId, message },
  });
});

test('wherever the disk fails while it is looked why a header is missing, the run is not told as one of which nothing was recorded', async () => {
  const folder = await temporaryFolder();
  await writeFile(path.join(folder, 'run.jsonl'), '');
  const sound = failingFiles(-1);
  expect((await summariseRun(sound.files, folder, runId)).ok).toBe(true);
  for (const failAt of sound.done().keys()) {
    expect([failAt, await summariseRun(failingFiles(failAt).files, folder, runId)]).toMatchObject([
      failAt,
      { ok: false, error: { kind: 'failed' } },
    ]);
  }
});
