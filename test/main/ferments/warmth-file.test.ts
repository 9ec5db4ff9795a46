import { readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';
import { type FileLayer, nodeFileLayer } from '#main';
import { usualWarmthBand as band, createRandom, fail, succeed } from '#shared-core';
import { createWarmthFiles, minutesUntilNow } from '../../../main/ferments/warmth-file.ts';
import {
  noWarmth,
  type WarmthLine,
  warmthLineText,
  warmthLog,
  warmthOfText,
} from '../../../main/ferments/warmth-lines.ts';
import { createManualTime } from '../support/manual-time.ts';
import { createPowerLossDisk, soundDisk } from '../support/power-loss-disk.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

const fermentId = '20250313T090000Z';
const at = (minute: number) => new Date(Date.UTC(2025, 2, 13, 9, minute)).toISOString();
const span = (minute: number, meanC = 30) => ({
  atIso: at(minute),
  lowC: meanC - 1,
  meanC,
  highC: meanC + 1,
  minutes: 1,
});
const keep = (minute: number, channel = 'ferment'): WarmthLine => ({
  kind: 'keep',
  ...warmthLog,
  keptAtIso: at(minute),
  band,
  channel,
  source: null,
});
const leave: WarmthLine = { kind: 'leave', keptAtIso: at(50) };
const minute = (number: number, meanC?: number): WarmthLine => ({
  kind: 'minute',
  ...span(number, meanC),
});
const keeping = (number: number, channel = 'ferment') => ({
  band,
  channel,
  source: null,
  sinceIso: at(number),
});

const soFar = { atIso: at(3), lowC: 30, meanC: 30.12345, highC: 31, readings: 7 };

async function inFolder(files: FileLayer = nodeFileLayer) {
  const folder = await temporaryFolder();
  return { folder, record: createWarmthFiles(files, folder) };
}

test('a record says how it is kept now, and holds each minute once, the first of two', () => {
  const text = [keep(0), minute(1), minute(2), minute(1, 20), leave, keep(51, 'pot'), minute(52)];
  expect(warmthOfText(text.map(warmthLineText).join(''))).toEqual({
    keeping: keeping(51, 'pot'),
    isKeptNow: true,
    minutes: [span(1), span(2), span(52)],
  });
  expect(warmthOfText([keep(0), leave].map(warmthLineText).join(''))).toEqual({
    keeping: keeping(0),
    isKeptNow: false,
    minutes: [],
  });
});

test('a line with a wrong byte is left out, and takes no other with it', () => {
  const [first = '', second = '', third = ''] = [keep(0), minute(1), minute(2)].map(warmthLineText);
  const damaged = second.replace('30', '31');
  expect(damaged).not.toBe(second);
  expect(warmthOfText(`${first}${damaged}\n{"kind":"mi${third}`).minutes).toEqual([]);
  expect(warmthOfText(`${first}${damaged}\n${third}`).minutes).toEqual([span(2)]);
  expect(warmthOfText('')).toEqual(noWarmth);
});

test('lines are added to the file of their ferment, which is found by its name', async () => {
  const { folder, record } = await inFolder();
  expect(await record.read(fermentId)).toEqual(succeed(noWarmth));
  expect(await record.add(fermentId, [keep(0), minute(1)])).toEqual(succeed(undefined));
  expect(await record.add(fermentId, [minute(2)])).toEqual(succeed(undefined));
  expect(await record.read(fermentId)).toMatchObject({ value: { minutes: [span(1), span(2)] } });
  await record.add('20250312T090000Z', [keep(0)]);
  for (const name of [
    'warmth-.jsonl',
    'warmth-x.jsonl.part',
    'notes-warmth-x.jsonl',
    'warmth--x.jsonl',
  ]) {
    await writeFile(path.join(folder, name), '');
  }
  expect(await record.ids()).toEqual(succeed([fermentId, '20250312T090000Z']));
  expect(await readFile(path.join(folder, `warmth-${fermentId}.jsonl`), 'utf8')).toBe(
    [keep(0), minute(1), minute(2)].map(warmthLineText).join(''),
  );
});

test('the minute under way lies beside the record, until the record has it', async () => {
  const { folder, record } = await inFolder();
  const read = async (numbers: readonly number[]) =>
    record.underWay(fermentId, { ...noWarmth, minutes: numbers.map((number) => span(number)) });
  expect(await read([])).toBeNull();
  expect(await record.keepUnderWay(fermentId, soFar)).toEqual(succeed(undefined));
  expect([await read([1, 2]), await read([1, 2, 3])]).toEqual([soFar, null]);
  await writeFile(path.join(folder, `warmth-${fermentId}.minute.json`), '{"atIso":"2025-');
  expect(await read([1, 2])).toBeNull();
  const whole = { atIso: at(3), lowC: 30, meanC: 30.123, highC: 31, minutes: 1 };
  const so = { ...noWarmth, minutes: [span(1)] };
  expect(minutesUntilNow(so, soFar)).toEqual([span(1), whole]);
  expect(minutesUntilNow(so, null)).toEqual([span(1)]);
});

test('what the disk says is told, and a record that cannot be read is not an empty one', async () => {
  const broken = async (file: string) =>
    fail({ kind: 'failed', path: file, message: 'EIO' } as const);
  const { record } = await inFolder({ ...nodeFileLayer, sizeBytes: broken, list: broken });
  const told = { ok: false, error: { kind: 'folder-unavailable', message: 'EIO' } };
  expect(await record.ids()).toMatchObject(told);
  expect(await record.read(fermentId)).toMatchObject(told);
  // Nobody knows whether there is one: none is begun.
  expect(await record.add(fermentId, [keep(0)])).toMatchObject({
    ok: false,
    error: { kind: 'folder-unavailable' },
  });
  const full = async (file: string) => fail({ kind: 'full', path: file, message: 'x' } as const);
  const { record: other } = await inFolder({ ...nodeFileLayer, rename: full });
  expect(await other.keepUnderWay(fermentId, soFar)).toMatchObject({
    ok: false,
    error: { kind: 'disk-full' },
  });
});

/** What a failed sync threw away can be read as long as the computer runs, and stands on no disk. */
test.each([
  ['the same program', false],
  ['the next program, where this one was killed', true],
])(
  'minutes that are told as kept are on the disk, whatever was not kept before them: by %s',
  async (_, isNext) => {
    let fails = false;
    const { scheduler } = createManualTime();
    const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, scheduler);
    const first = createWarmthFiles(disk.files, '/runs');
    await first.add(fermentId, [keep(0)]);
    await first.add(fermentId, [minute(1)]);
    fails = true;
    expect(await first.add(fermentId, [minute(2)])).toMatchObject({ ok: false });
    fails = false;
    const record = isNext ? createWarmthFiles(disk.files, '/runs') : first;
    for (const lines of [[minute(2)], [minute(3)], [minute(4)]]) {
      expect(await record.add(fermentId, lines)).toEqual(succeed(undefined));
      for (let seed = 0; seed < 10; seed += 1) {
        const found = createWarmthFiles(disk.losePower(createRandom(seed)), '/runs');
        expect(await found.read(fermentId)).toEqual(await record.read(fermentId));
      }
    }
    expect(await record.read(fermentId)).toMatchObject({
      value: { minutes: [span(1), span(2), span(3), span(4)] },
    });
  },
);

test('that a person keeps or leaves it is written whole or not at all', async () => {
  let fails = false;
  const { scheduler } = createManualTime();
  const disk = createPowerLossDisk({ ...soundDisk, failSync: () => fails }, scheduler);
  const record = createWarmthFiles(disk.files, '/runs');
  await record.add(fermentId, [keep(0)]);
  await record.add(fermentId, [minute(1)]);
  fails = true;
  expect(await record.add(fermentId, [leave])).toMatchObject({ ok: false });
  expect(await record.read(fermentId)).toMatchObject({ value: { isKeptNow: true } });
});
