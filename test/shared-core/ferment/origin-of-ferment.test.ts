import { expect, test } from 'vitest';
import { extractGPerL } from '../../../shared-core/ferment/gravity-and-extract.ts';
import { originOfFerment } from '../../../shared-core/ferment/origin-of-ferment.ts';
import {
  factsOfFerment,
  readingsOfFerment,
  standingEntries,
} from '../../../shared-core/ferment/readings-of-ferment.ts';
import type { KeptFerment } from '../../../shared-core/ferment-log/kept-ferment.ts';
import { nothingRead } from '../../support/nothing-read.ts';

const beganAtIso = '2026-05-01T08:00:00.000Z';
const entry = (
  entryId: number,
  atIso: string,
  changes: Partial<KeptFerment['entries'][number]['read']> = {},
  withdrawnAtIso: string | null = null,
): KeptFerment['entries'][number] => ({
  entryId,
  keptAtIso: atIso,
  read: { ...nothingRead, treatments: [], atIso, ...changes },
  withdrawnAtIso,
});
const kept = (
  sugarG: KeptFerment['stated']['sugarG'],
  entries: KeptFerment['entries'] = [],
): KeptFerment => ({
  fermentId: 'a',
  stated: { name: 'Pears', beganAtIso, volumeMl: 2000, sugarG, wentIn: 'pears' },
  corrections: [],
  entries,
  unreadableLines: 0,
});
const verdict = {
  state: 'finished',
  strengthAbv: { low: 9.6, value: 10, high: 10.4 },
  originalGravity: { low: 1.07 - 0.00329, value: 1.07, high: 1.07 + 0.00329 },
} as const;

test('a charge comes from a ferment as it was stated, judged and kept', () => {
  const log = kept({ low: 340, high: 380 }, [
    entry(1, beganAtIso),
    entry(2, beganAtIso, {}, beganAtIso),
  ]);
  // 360 g in 2 L; evenly spread over 40 g about it, and a volume known to 2 %.
  const share = Math.hypot(20 / 360 / Math.sqrt(3), 0.02);
  expect(originOfFerment(log, verdict, '2026-05-09T08:00:00Z')).toEqual({
    fermentId: 'a',
    name: 'Pears',
    wentIn: 'pears',
    beganAtIso,
    chargedAtIso: '2026-05-09T08:00:00Z',
    entries: 1,
    state: 'finished',
    strengthAbv: { low: 9.6, value: 10, high: 10.4 },
    sugarGPerL: { value: 180, standardUncertainty: Number((180 * share).toFixed(2)) },
  });
});

test('a sugar that nobody stated is the extract less what of it is no sugar', () => {
  const { sugarGPerL } = originOfFerment(kept(null), verdict, '') ?? {};
  expect(sugarGPerL?.value).toBeCloseTo(extractGPerL(1.07) - 19, 1);
  // 22 g/L evenly spread, and a gravity known to 0.00329/1.645 = 0.002.
  expect(sugarGPerL?.standardUncertainty).toBeCloseTo(
    Math.hypot(22 / Math.sqrt(12), 2590 * 0.002),
    1,
  );
});

test('without gravity, or with less extract than is no sugar, there is no sugar to tell', () => {
  const sugarOf = (value: number | null) =>
    originOfFerment(
      kept(null),
      {
        ...verdict,
        originalGravity: value === null ? null : { low: value, value, high: value },
      },
      '',
    )?.sugarGPerL;
  expect([sugarOf(null), sugarOf(1.005)]).toEqual([null, null]);
  expect(sugarOf(1.02)?.value).toBeGreaterThan(0);
});

test('entries stand in the order of their moments, of one moment in the order they were kept', () => {
  const later = '2026-05-01T20:00:00.000Z';
  const entries = [entry(3, later), entry(2, later), entry(4, beganAtIso)];
  expect(
    standingEntries({ stated: { beganAtIso }, entries }).map(({ timeH, entry: { entryId } }) => [
      timeH,
      entryId,
    ]),
  ).toEqual([
    [0, 4],
    [12, 2],
    [12, 3],
  ]);
});

test('a reading from before the beginning counts at the beginning', () => {
  const early = entry(1, '2026-05-01T07:30:00.000Z', { temperatureC: 21 });
  expect(readingsOfFerment(kept(null, [early]))).toEqual([
    {
      timeH: 0,
      gravity: null,
      massG: null,
      temperatureC: 21,
      bubblesPerMin: null,
      isDegassed: false,
    },
  ]);
});

test('a sugar tells the judge what was weighed within 8 %, and is a fruit’s beyond', () => {
  const told = (low: number, high: number) => {
    const { sugarG, isFromFruit } = factsOfFerment({ volumeMl: 2000, sugarG: { low, high } });
    return [sugarG, isFromFruit];
  };
  expect([told(100, 108), told(100, 108.1)]).toEqual([
    [104, false],
    [null, true],
  ]);
  expect(factsOfFerment({ volumeMl: 2000, sugarG: null })).toEqual({
    volumeMl: 2000,
    sugarG: null,
    isFromFruit: true,
  });
});
