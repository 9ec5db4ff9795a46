import { beforeAll, expect, test } from 'vitest';
import { type Drawing, type RunStudy, studyRun } from '#shared-core';
import { overlayFigure } from '../../../shared-core/figures/overlay-figure.ts';
import { pearRun } from '../report/support/pear-run.ts';
import { pathsOf, wordsOf } from './support/read-off.ts';

let study: RunStudy;
beforeAll(() => {
  study = studyRun(pearRun().run);
});

const rows = (fromS: number, headC: number) =>
  Array.from({ length: 21 }, (_, index) => ({
    timeS: fromS + 30 * index,
    headC: headC + index / 10,
    readings: 1,
    pressureKPa: 100,
    stage: 'main-fraction' as const,
    aboveAzeotropeK: 0,
    isBathed: false,
    vapourAbv: null,
  }));
const withRows = (name: string, arrivedS: number, of: RunStudy['rows']): RunStudy => ({
  ...study,
  name,
  rows: of,
  verdicts: {
    ...study.verdicts,
    events: [
      { event: 'plateau-ending', timeS: 5, because: '' },
      { event: 'vapour-arrived', timeS: arrivedS, because: '' },
    ],
  },
});
const drawn = (studies: readonly RunStudy[]): Drawing => {
  const drawing = overlayFigure(studies);
  if (drawing === null) throw new Error('no figure');
  return drawing;
};
const lines = (drawing: Drawing) => pathsOf(drawing).filter(({ points }) => points.length > 5);

test('runs lie over each other from the arrival of vapour, whenever it came', () => {
  const drawing = drawn([
    withRows('Early', 300, rows(300, 78)),
    withRows('Late', 900, rows(900, 80)),
  ]);
  const [early, late] = lines(drawing);
  expect(early?.points.map(([x]) => x)).toEqual(late?.points.map(([x]) => x));
  // Two kelvin apart throughout, the warmer above.
  const apart = (early?.points ?? []).map(([, y], index) => y - (late?.points[index]?.[1] ?? 0));
  expect(Math.max(...apart) - Math.min(...apart)).toBeLessThan(1e-9);
  // 43 °C over 208 pt.
  expect(apart[0]).toBeCloseTo((2 * 208) / 43, 9);
  const begin = wordsOf(drawing).find(({ text }) => text === '0 min');
  expect(early?.points[0]?.[0]).toBeCloseTo(begin?.at[0] ?? Number.NaN, 9);
});

test('two minutes before the vapour are shown, and nothing cooler than 60 °C', () => {
  const drawing = drawn([
    withRows('Long', 300, rows(0, 78)),
    withRows('Cold', 300, [...rows(300, 59.5)]),
  ]);
  const [long, cold] = lines(drawing);
  // From 180 s, two minutes before 300 s, to 600 s; 60 °C is reached 150 s after the vapour.
  const at = (words: string) => wordsOf(drawing).find(({ text }) => text === words)?.at[0] ?? 0;
  const perS = (at('4 min') - at('0 min')) / 240;
  const timesOf = (path: typeof long) =>
    [path?.points[0], path?.points.at(-1)].map((point) =>
      Math.round(((point?.[0] ?? 0) - at('0 min')) / perS),
    );
  expect(timesOf(long)).toEqual([-120, 300]);
  expect(timesOf(cold)).toEqual([150, 600]);
  expect(wordsOf(drawing).some(({ text }) => text === '−2 min')).toBe(true);
});

test('the key names each run, and says which was imported', () => {
  const drawing = drawn([
    withRows('Own', 300, rows(300, 78)),
    { ...withRows('Logger', 300, rows(300, 79)), imported: true },
  ]);
  const key = wordsOf(drawing).slice(-2);
  expect(key.map(({ text }) => text)).toEqual([
    '1  Own (20260318-0915)',
    '2  Logger (20260318-0915, imported)',
  ]);
  expect(key[1]!.at[1] - key[0]!.at[1]).toBe(12);
  expect(key[1]!.at[1]).toBeLessThan(drawing.heightPt);
  expect(drawing.altText).toBe('Head temperatures of 2 runs, counted from the arrival of vapour.');
});

test('one run alone is not laid over anything', () => {
  expect(overlayFigure([study])).toBeNull();
});
