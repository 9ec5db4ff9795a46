import { expect, test } from 'vitest';
import { firstFractionProgress } from '../../../../shared-core/monitor/conclude/first-fraction-progress.ts';

test('minutes are counted from when the head has held, whatever was booked', () => {
  const after = (heldForS: number) =>
    firstFractionProgress(
      { kind: 'minutes', minutes: 4 },
      { drops: 99, collectedMl: 50 },
      heldForS,
      1,
    );
  const minutes = { wanted: 4, unit: 'min', estimated: false };
  expect([after(0), after(239), after(240)]).toEqual([
    { ...minutes, over: false, done: 0 },
    { ...minutes, over: false, done: 239 / 60 },
    { ...minutes, over: true, done: 4 },
  ]);
});

test('a volume is what was booked, and where that is less, what flowed at the expected rate while the head held', () => {
  const by = (collectedMl: number | null, heldForS: number) =>
    firstFractionProgress(
      { kind: 'volume', volumeMl: 5 },
      { drops: 99, collectedMl },
      heldForS,
      0.02,
    );
  const volume = { wanted: 5, unit: 'mL' };
  expect([by(5, 10), by(5, 0), by(4.9, 10), by(1, 200), by(null, 249), by(null, 250)]).toEqual([
    { ...volume, over: true, done: 5, estimated: false },
    { ...volume, over: false, done: 5, estimated: false },
    { ...volume, over: false, done: 4.9, estimated: true },
    { ...volume, over: false, done: 4, estimated: true },
    { ...volume, over: false, done: expect.closeTo(4.98, 9), estimated: true },
    { ...volume, over: true, done: 5, estimated: true },
  ]);
});

test('drops are those counted, or forty for each millilitre booked or estimated', () => {
  const by = (drops: number, collectedMl: number | null, heldForS = 1) =>
    firstFractionProgress({ kind: 'drops', count: 60 }, { drops, collectedMl }, heldForS, 0.01);
  const counted = { wanted: 60, unit: 'drops' };
  expect([by(60, null), by(30, 4), by(0, 1.5), by(0, null, 100), by(0, null, 150)]).toEqual([
    { ...counted, over: true, done: 60, estimated: false },
    { ...counted, over: false, done: 30, estimated: true },
    { ...counted, over: true, done: 60, estimated: false },
    { ...counted, over: false, done: 40, estimated: true },
    { ...counted, over: true, done: 60, estimated: true },
  ]);
});
