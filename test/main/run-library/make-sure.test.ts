import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import {
  continueRecorder,
  createRunLibrary,
  emptyReport,
  type FileLayer,
  nodeFileLayer,
  type Recorder,
  readRunLog,
  readRunSoFar,
  startRecorder,
} from '#main';
import { createRandom, type LogBody } from '#shared-core';
import { makeSure } from '../../../main/run-library/make-sure.ts';
import { failingFiles } from '../support/failing-files.ts';
import { logHeader } from '../support/log-header.ts';
import { logText } from '../support/log-text.ts';
import { createManualTime, type ManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const runsFolder = '/runs';
const runId = '20250314T101500Z';
const folder = `${runsFolder}/${runId}`;
const header = logHeader(runId);
const reading = (timeS: number): LogBody => ({ kind: 'readings', readings: [[timeS, 'head', 20]] });
const firstSeconds = (count: number) => Array.from({ length: count }, (_, index) => index + 1);

/** A disk on which one run is recorded; its syncs fail from the tenth second on, until it is told otherwise. */
async function recordedBadly() {
  let fails = false;
  const time = createManualTime();
  const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, time.scheduler);
  const recorder = await start(disk.files, time);
  for (const timeS of firstSeconds(70)) {
    fails = timeS > 10;
    recorder.append(reading(timeS), timeS, 'soon');
    await time.pass(1);
  }
  const setFailing = (failing: boolean) => {
    fails = failing;
  };
  return { disk, recorder, time, setFailing };
}

async function start(files: FileLayer, { clock, scheduler }: ManualTime): Promise<Recorder> {
  const onStatus = () => undefined;
  const started = await startRecorder({ files, clock, scheduler, folder, header, onStatus });
  return started.ok ? started.value : expect.fail(started.error.message);
}

function open(files: FileLayer, at = runsFolder, mayWrite = () => true) {
  return createRunLibrary({ files, clock: createManualTime().clock, runsFolder: at, mayWrite });
}

async function told(files: FileLayer, at = runsFolder) {
  const known = await open(files, at).summary(runId);
  if (!known.ok) expect.fail(known.error.kind);
  return { ...known.value.summary, isUnsure: known.value.summary.unsure === true };
}

async function timesIn(files: FileLayer): Promise<readonly number[]> {
  const timesS: number[] = [];
  const report = emptyReport();
  for await (const records of readRunLog(files, folder, report)) {
    for (const { body } of records) {
      if (body.kind === 'readings') timesS.push(...body.readings.map(([timeS]) => timeS));
    }
  }
  expect(report.problem).toBeNull();
  return timesS;
}

async function namesIn(files: FileLayer): Promise<readonly string[]> {
  const listed = await files.list(folder);
  return listed.ok ? listed.value.map(({ name }) => name).sort() : [];
}

test('what can be read of a run that was cut off is on the disk once a program has begun, though none goes on with it', async () => {
  const { disk, setFailing } = await recordedBadly();
  // Killed here. The disk works again.
  setFailing(false);
  await open(disk.files).makeAllSure(null);
  const shown = await timesIn(disk.files);
  expect(shown.length).toBeGreaterThan(67);
  expect(shown).toEqual(firstSeconds(shown.length));
  for (let seed = 0; seed < 10; seed += 1) {
    expect(await timesIn(disk.losePower(createRandom(seed)))).toEqual(shown);
  }
});

test('what the end of a run could not save, as its program was told, is on the disk once another has begun', async () => {
  const { disk, recorder, time, setFailing } = await recordedBadly();
  const closed = recorder.close({ timeS: 70 });
  await time.pass(5);
  expect(await closed).toMatchObject({ ok: false });
  setFailing(false);
  await open(disk.files).makeAllSure(null);
  const shown = await timesIn(disk.files);
  for (let seed = 0; seed < 10; seed += 1) {
    const files = disk.losePower(createRandom(seed));
    expect(await timesIn(files)).toEqual(shown);
    expect(await told(files)).toMatchObject({ ended: 'clean', durationS: 70, isUnsure: false });
  }
});

test('it is made sure once: neither the next program nor a run that was ended well begins a file', async () => {
  const { disk, setFailing } = await recordedBadly();
  setFailing(false);
  await open(disk.files).makeAllSure(null);
  const names = await namesIn(disk.files);
  await open(disk.files).makeAllSure(null);
  expect(await namesIn(disk.files)).toEqual(names);

  const time = createManualTime();
  const sound = createPowerLossDisk(soundDisk, time.scheduler);
  const recorder = await start(sound.files, time);
  recorder.append(reading(1), 1, 'soon');
  expect(await recorder.close({ timeS: 2 })).toEqual({ ok: true });
  await open(sound.files).makeAllSure(null);
  expect(await namesIn(sound.files)).toEqual(['run.jsonl', 'summary.json']);
});

test('a run of which all is sure is left as it is, whoever asks', async () => {
  const time = createManualTime();
  const { files } = createPowerLossDisk(soundDisk, time.scheduler);
  const recorder = await start(files, time);
  recorder.append(reading(1), 1, 'soon');
  const closing = recorder.close({ timeS: 2 });
  await time.pass(2);
  await closing;
  expect(await makeSure({ files, clock: time.clock }, folder)).toEqual({
    ok: true,
    value: undefined,
  });
  expect(await namesIn(files)).toEqual(['run.jsonl']);
});

test('a run that was made sure goes on, and the moment at which it was cut off is still known', async () => {
  const { disk, setFailing } = await recordedBadly();
  setFailing(false);
  const before = await readRunSoFar(disk.files, folder);
  await open(disk.files).makeAllSure(null);
  const read = await readRunSoFar(disk.files, folder);
  const past = read.ok ? read.value : null;
  if (past === null || !before.ok || before.value === null) expect.fail('It can go on.');
  expect(past.logEnd.unsure).toEqual([]);
  expect([past.written, past.writtenAtS]).toEqual([before.value.written, before.value.writtenAtS]);
  const setup = { files: disk.files, folder, header, onStatus: () => undefined };
  const continued = await continueRecorder(
    { ...setup, ...createManualTime() },
    past.logEnd,
    past.memory,
  );
  if (!continued.ok) expect.fail(continued.error.message);
  const shown = await timesIn(disk.files);
  continued.value.append(reading(90), 90, 'now');
  expect(await continued.value.close()).toEqual({ ok: true });
  expect(await timesIn(disk.losePower(createRandom(1)))).toEqual([...shown, 90]);
});

test('a run that comes back from the bin is made sure too', async () => {
  const { disk, setFailing } = await recordedBadly();
  setFailing(false);
  const library = open(disk.files);
  expect(await library.trash(runId)).toMatchObject({ ok: true });
  await library.makeAllSure(null);
  expect(await library.restore(runId)).toEqual({ ok: true, value: runId });
  const shown = await timesIn(disk.files);
  expect(shown.length).toBeGreaterThan(67);
  expect(await timesIn(disk.losePower(createRandom(3)))).toEqual(shown);
});

/** A run on a real disk that was cut off after these records. */
async function cutOff(bodies: readonly LogBody[], extra = '') {
  const at = await temporaryFolder();
  await nodeFileLayer.makeFolder(path.join(at, runId));
  const text = logText([{ kind: 'header', header }, ...bodies]);
  await writeFile(path.join(at, runId, 'run.jsonl'), text + extra, 'latin1');
  const names = async () => (await readdir(path.join(at, runId))).sort();
  return { at, names, text };
}

test('wherever the disk fails, the record stays as it was, and the next program makes it sure', async () => {
  const sound = failingFiles(-1);
  const whole = await cutOff([reading(1), reading(2)]);
  await open(sound.files, whole.at).makeAllSure(null);
  expect(await whole.names()).toEqual(['run-2.jsonl', 'run-3.jsonl', 'run.jsonl', 'summary.json']);
  for (const failure of ['refuses', 'takes half'] as const) {
    for (const [failAt, operation] of sound.done().entries()) {
      if (failure === 'takes half' && operation !== 'write') continue;
      const run = await cutOff([reading(1), reading(2)]);
      const disk = failingFiles(failAt, failure);
      await open(disk.files, run.at).makeAllSure(null);
      expect([operation, disk.stillOpen()]).toEqual([operation, 0]);
      const log = await readFile(path.join(run.at, runId, 'run.jsonl'), 'latin1');
      expect(log).toBe(run.text);
      await open(nodeFileLayer, run.at).makeAllSure(null);
      const shown = { readings: 2, damagedRecords: 0, isUnsure: false };
      expect(await told(nodeFileLayer, run.at)).toMatchObject(shown);
      const left = (await run.names()).filter((name) => /^run-\d+\.jsonl$/.test(name));
      expect([failAt, left.length]).toEqual([failAt, 2]);
    }
  }
});

test('a folder that another program has is left as it is, and so is a run of which a newer version wrote a part', async () => {
  const theirs = await cutOff([reading(1)]);
  await open(nodeFileLayer, theirs.at, () => false).makeAllSure(null);
  expect(await theirs.names()).toEqual(['run.jsonl']);
  const newer = await cutOff([reading(1), { kind: 'not-known-yet' } as unknown as LogBody]);
  await open(nodeFileLayer, newer.at).makeAllSure(null);
  expect(await newer.names()).toEqual(['run.jsonl', 'summary.json']);
  expect(await told(nodeFileLayer, newer.at)).toMatchObject({ readings: 1, isUnsure: true });
});
