import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { type FileLayer, nodeFileLayer, type ProbeReading } from '#main';
import {
  usualWarmthBand as band,
  type KeptFerment,
  type KeptWarm,
  type ProbeSource,
  serialSourceSchema,
} from '#shared-core';
import { createWarmthFiles } from '../../../main/ferments/warmth-file.ts';
import { createWarmthKeeper } from '../../../main/ferments/warmth-keeper.ts';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';
import { eventually } from '../../support/eventually.ts';
import { createManualTime } from '../support/manual-time.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const serial = serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' });
const demo: ProbeSource = { kind: 'demo', rig: 'vigreux', timeScale: 1, seed: 1 };
const pears = '20250313T090000Z';
const quinces = '20250312T090000Z';

/** A keeper with everything around it in the test's hand, and the files of a real disk. */
async function setUp(other: { readonly runsFolder?: string; readonly files?: FileLayer } = {}) {
  const runsFolder = other.runsFolder ?? (await temporaryFolder());
  const files = other.files ?? nodeFileLayer;
  const time = createManualTime();
  const state = {
    source: serial as ProbeSource | null,
    mayWrite: true,
    isRunUnderWay: false,
    known: [pears, quinces] as readonly string[],
  };
  const told: (KeptWarm | null)[] = [];
  const asked: ProbeSource[] = [];
  const keeper = createWarmthKeeper({
    files,
    clock: time.clock,
    scheduler: time.scheduler,
    runsFolder,
    mayWrite: () => state.mayWrite,
    fermentOf: async (fermentId) =>
      state.known.includes(fermentId)
        ? ({ fermentId, stated: { name: `Juice ${fermentId}` } } as KeptFerment)
        : null,
    probe: {
      status: () => ({ ...noProbeStatus, source: state.source }),
      reconnect: async (source) => void asked.push(source),
    },
    isRunUnderWay: () => state.isRunUnderWay,
    onNow: (kept) => told.push(kept),
  });
  onTestFinished(() => keeper.close());
  const reading = (rest: Partial<ProbeReading> = {}): ProbeReading => ({
    atS: time.clock.monotonicS(),
    channel: 'ferment',
    value: 30,
    unit: '°C',
    quality: 'good',
    ...rest,
  });
  return {
    runsFolder,
    time,
    state,
    told,
    asked,
    keeper,
    hear: (...rests: readonly Partial<ProbeReading>[]) => keeper.seeReadings(rests.map(reading)),
    keep: (fermentId = pears, channel = 'ferment') => keeper.keep({ fermentId, band, channel }),
    /** What is on the disk of a ferment, once everything that was begun has ended. */
    async onDisk(fermentId = pears) {
      await keeper.close();
      const text = await readFile(path.join(runsFolder, `warmth-${fermentId}.jsonl`), 'utf8');
      return text
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line));
    },
  };
}

const meansOf = (lines: readonly { readonly kind: string; readonly meanC?: number }[]) =>
  lines.flatMap(({ kind, meanC }) => (kind === 'minute' ? [meanC] : []));

test('only what the ferment’s own channel says in °C, and says well, is of the ferment', async () => {
  const { hear, keep, time, onDisk } = await setUp();
  await keep();
  hear(
    { value: 30 },
    { value: 78, channel: 'head' },
    { value: 99, unit: 'g' },
    { value: 85, quality: 'bad' },
    { value: 31 },
  );
  await time.pass(66);
  expect(meansOf(await onDisk())).toEqual([30.5]);
});

test('nothing simulated is a ferment’s, and nothing that a run has in the still', async () => {
  const { hear, keep, time, state, onDisk, keeper } = await setUp();
  await keep(pears, 'head');
  state.source = demo;
  hear({ channel: 'head', value: 78 });
  state.source = serial;
  state.isRunUnderWay = true;
  hear({ channel: 'head', value: 78 });
  expect(keeper.now()).toMatchObject({ isProbeAtStill: true });
  state.isRunUnderWay = false;
  hear({ channel: 'head', value: 30 });
  expect(keeper.now()).toMatchObject({ isProbeAtStill: false });
  await time.pass(66);
  expect(meansOf(await onDisk())).toEqual([30]);
});

test('a probe of the ferment’s own goes on beside a run', async () => {
  const { hear, keep, time, state, onDisk } = await setUp();
  await keep();
  state.isRunUnderWay = true;
  hear({ value: 29 });
  await time.pass(66);
  expect(meansOf(await onDisk())).toEqual([29]);
});

test('a reading that waited belongs to the minute in which it was measured', async () => {
  const { hear, keep, time, onDisk } = await setUp();
  await keep();
  await time.pass(61);
  hear({ value: 20, atS: time.clock.monotonicS() - 10 }, { value: 30 });
  // What claims to be of a moment to come is of now.
  hear({ value: 31, atS: time.clock.monotonicS() + 600 });
  await time.pass(66);
  expect(meansOf(await onDisk())).toEqual([20, 30.5]);
});

test('windows are told when anything changes, and not when nothing does', async () => {
  const { hear, keep, time, told } = await setUp();
  const kept = await keep();
  expect(kept).toMatchObject({
    ok: true,
    value: {
      fermentId: pears,
      isKeptNow: true,
      keeping: { band, channel: 'ferment', sinceIso: '2025-03-14T10:15:00.000Z' },
      stretches: [],
    },
  });
  expect(told).toMatchObject([{ fermentId: pears, name: `Juice ${pears}`, unsaved: null }]);
  expect(told[0]?.keeping).not.toHaveProperty('source');
  await time.pass(30);
  expect(told).toHaveLength(1);
  hear({});
  await time.pass(70);
  expect(told.at(-1)).toMatchObject({ now: { temperatureC: 30 } });
});

test('what nobody began, and what may not be written, is refused in words', async () => {
  const { keep, keeper, state, runsFolder } = await setUp();
  expect(await keep('none-such')).toMatchObject({
    ok: false,
    error: { kind: 'request-invalid', message: 'There is no such ferment' },
  });
  const inUse = { ok: false, error: { kind: 'folder-in-use', path: runsFolder } };
  await keep();
  state.mayWrite = false;
  expect(await keep(quinces)).toEqual(inUse);
  expect(await keeper.leave(pears)).toEqual(inUse);
  expect(keeper.now()).toMatchObject({ fermentId: pears });
  // Whoever leaves what is not kept changes nothing.
  expect(await keeper.leave(quinces)).toMatchObject({
    ok: true,
    value: { fermentId: quinces, isKeptNow: false, keeping: null, stretches: [] },
  });
  state.mayWrite = true;
});

test('minutes of a folder that another program has wait, and are told as unsaved', async () => {
  const { hear, keep, time, state, keeper, onDisk } = await setUp();
  await keep();
  state.mayWrite = false;
  hear({ value: 28 });
  await time.pass(70);
  expect(keeper.now()).toMatchObject({ unsaved: 'folder-in-use' });
  state.mayWrite = true;
  await time.pass(5);
  await eventually(() => expect(keeper.now()).toMatchObject({ unsaved: null }));
  expect(meansOf(await onDisk())).toEqual([28]);
});

test('a record that the disk does not give is told as that, and not as a ferment that was never kept', async () => {
  const broken = async (file: string) =>
    ({ ok: false, error: { kind: 'failed', path: file, message: 'EIO' } }) as const;
  const { keeper } = await setUp({ files: { ...nodeFileLayer, sizeBytes: broken, list: broken } });
  expect(await keeper.report(pears)).toMatchObject({
    ok: false,
    error: { kind: 'folder-unavailable', message: 'EIO' },
  });
  await keeper.goOn();
  expect(keeper.now()).toBeNull();
});

test('another ferment that is kept ends the first in its record; the same one anew does not', async () => {
  const { hear, keep, time, onDisk, keeper } = await setUp();
  await keep();
  hear({ value: 28 });
  await keep(pears);
  await time.pass(1);
  await keep(quinces);
  hear({ value: 26 });
  expect(await keeper.report(pears)).toMatchObject({
    value: { isKeptNow: false, stretches: [{ meanC: 28, minutes: 1 }] },
  });
  await keeper.leave(quinces);
  expect(keeper.now()).toBeNull();
  expect((await onDisk(pears)).map(({ kind }) => kind)).toEqual([
    'keep',
    'minute',
    'keep',
    'leave',
  ]);
  const [kept, minute, left] = await onDisk(quinces);
  expect(kept).toMatchObject({
    kind: 'keep',
    channel: 'ferment',
    source: { path: '/dev/ttyACM0' },
  });
  expect([minute.meanC, left.kind]).toEqual([26, 'leave']);
});

/** A folder where a ferment was kept when the program ended in the middle of a minute. */
async function endedWithin(source: ProbeSource | null = serial) {
  const first = await setUp();
  first.state.source = source;
  await first.keep();
  first.hear({ value: 28 });
  await first.keeper.close();
  return first.runsFolder;
}

test('a minute that the program ended in is gone on with, and none that was over', async () => {
  const runsFolder = await endedWithin();
  const again = await setUp({ runsFolder });
  await again.keeper.goOn();
  again.hear({ value: 30 });
  await again.time.pass(66);
  expect(meansOf(await again.onDisk())).toEqual([29]);
});

test('a program that may not write leaves the minute under way to the one that may', async () => {
  const first = await setUp();
  await first.keep();
  first.hear({ value: 28 });
  first.state.mayWrite = false;
  await first.keeper.close();
  const record = createWarmthFiles(nodeFileLayer, first.runsFolder);
  const read = await record.read(pears);
  expect(read.ok && (await record.underWay(pears, read.value))).toBeNull();
});

test('its probe is asked for until there is one, and not where there was none', async () => {
  const again = await setUp({ runsFolder: await endedWithin() });
  again.state.source = null;
  await again.keeper.goOn();
  expect(again.asked).toEqual([serial]);
  await again.time.pass(61);
  expect(again.asked).toEqual([serial, serial, serial]);
  again.state.source = serial;
  await again.time.pass(31);
  // Whoever lets go of it later means it.
  again.state.source = null;
  await again.time.pass(120);
  expect(again.asked).toHaveLength(3);
  const without = await setUp({ runsFolder: await endedWithin(null) });
  without.state.source = null;
  await without.keeper.goOn();
  await without.time.pass(61);
  expect(without.asked).toEqual([]);
});

test('a ferment that was left, or is no longer there, is not gone on with', async () => {
  const runsFolder = await endedWithin();
  const gone = await setUp({ runsFolder });
  gone.state.known = [quinces];
  await gone.keeper.goOn();
  expect(gone.keeper.now()).toBeNull();
  const leaving = await setUp({ runsFolder });
  await leaving.keeper.goOn();
  expect(leaving.keeper.now()).toMatchObject({ fermentId: pears });
  await leaving.keeper.leave(pears);
  const left = await setUp({ runsFolder });
  await left.keeper.goOn();
  expect([left.keeper.now(), left.asked]).toEqual([null, []]);
});

/** A disk that takes nothing while `isFull`. */
function fullDisk() {
  const disk = { isFull: false };
  const unlessFull =
    (open: FileLayer['openAppend']): FileLayer['openAppend'] =>
    async (at) =>
      disk.isFull ? { ok: false, error: { kind: 'full', path: at, message: 'ENOSPC' } } : open(at);
  const files: FileLayer = {
    ...nodeFileLayer,
    openAppend: unlessFull(nodeFileLayer.openAppend),
    createAppend: unlessFull(nodeFileLayer.createAppend),
  };
  return { disk, files };
}

test('a ferment that the disk does not let be left is still kept, and nothing of its minute is lost', async () => {
  const { disk, files } = fullDisk();
  const bench = await setUp({ files });
  await bench.keep(pears);
  bench.hear({ value: 28 });
  disk.isFull = true;
  const answers = [
    await bench.keeper.leave(pears),
    await bench.keep(quinces),
    await bench.keep(pears, 'room'),
  ];
  expect(answers.map(({ ok }) => ok)).toEqual([false, false, false]);
  expect(bench.keeper.now()).toMatchObject({ fermentId: pears, keeping: { channel: 'ferment' } });
  disk.isFull = false;
  bench.hear({ value: 30 });
  await bench.keeper.leave(pears);
  expect(bench.keeper.now()).toBeNull();
  const lines = await bench.onDisk(pears);
  expect([meansOf(lines), lines.at(-1).kind]).toEqual([[29], 'leave']);
});

/** Found in a simulated world: the one that could not be left was kept again by the next program. */
test('the next program keeps the ferment that was kept last', async () => {
  const { disk, files } = fullDisk();
  const bench = await setUp({ files });
  await bench.keep(pears);
  disk.isFull = true;
  await bench.keeper.leave(pears);
  disk.isFull = false;
  await bench.keep(quinces);
  const again = await setUp({ runsFolder: bench.runsFolder });
  await again.keeper.goOn();
  expect(again.keeper.now()).toMatchObject({ fermentId: quinces });
});

test('the next program keeps the one asked for last, where a line that failed is on the disk all the same', async () => {
  let fails = true;
  const failing: FileLayer = {
    ...nodeFileLayer,
    async syncFolder(at) {
      if (!fails) return nodeFileLayer.syncFolder(at);
      return { ok: false, error: { kind: 'failed', path: at, message: 'EIO' } };
    },
  };
  const bench = await setUp({ files: failing });
  expect((await bench.keep(pears)).ok).toBe(false);
  fails = false;
  await bench.time.pass(1);
  await bench.keep(quinces);
  const again = await setUp({ runsFolder: bench.runsFolder });
  await again.keeper.goOn();
  expect(again.keeper.now()).toMatchObject({ fermentId: quinces });
});
