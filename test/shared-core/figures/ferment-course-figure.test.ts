import { expect, test } from 'vitest';
import {
  fermentStrengthFigure,
  gravitiesFigure,
} from '../../../shared-core/figures/ferment-course-figure.ts';
import { dotsOf, pathsOf, readOff, rounded, wordsOf } from './support/read-off.ts';

const judged = (timeH: number, low: number, value: number, high: number) => ({
  timeH,
  strengthAbv: { low, value, high },
});
const course = [judged(0, -1, 0.5, 2), judged(48, 4, 6, 8), judged(108, 9, 10.04, 11)];

function strengths(of = course) {
  const drawing = fermentStrengthFigure(of);
  if (drawing === null) throw new Error('no figure');
  return drawing;
}

test('strengths are read off over the days, each with its dot', () => {
  const drawing = strengths();
  const read = readOff(drawing);
  const line = pathsOf(drawing).find(({ stroke }) => stroke?.widthPt === 1.2);
  const read3 = [
    [0, 0.5],
    [2, 6],
    [4.5, 10.04],
  ];
  expect(rounded((line?.points ?? []).map(read))).toEqual(read3);
  expect(rounded(dotsOf(drawing).map(read))).toEqual(read3);
});

test('the interval is shaded, nowhere below nothing', () => {
  const [band] = pathsOf(strengths());
  expect(band?.closed).toBe(true);
  expect(rounded((band?.points ?? []).map(readOff(strengths())))).toEqual([
    [0, 0],
    [2, 4],
    [4.5, 9],
    [4.5, 11],
    [2, 8],
    [0, 2],
  ]);
});

test('its words tell the last judgement', () => {
  expect(strengths().altText).toBe(
    'Strength by the log after each reading: at last 10.0 % vol, 90 % interval 9.0 to 11.0 % vol.',
  );
});

test('one judgement makes no course, and three days are the least shown', () => {
  expect(fermentStrengthFigure(course.slice(0, 1))).toBeNull();
  const days = wordsOf(strengths(course.slice(0, 2)))
    .filter(({ anchor, text }) => anchor === 'middle' && /^\d+$/.test(text))
    .map(({ text }) => text);
  expect(days).toEqual(['0', '1', '2', '3']);
});

test('days of a month are told every third day', () => {
  const long = [judged(0, 0, 1, 2), judged(30 * 24, 9, 10, 11)];
  const days = wordsOf(strengths(long))
    .filter(({ anchor, text }) => anchor === 'middle' && /^\d+$/.test(text))
    .map(({ text }) => Number(text));
  expect(days).toEqual([0, 3, 6, 9, 12, 15, 18, 21, 24, 27, 30]);
});

const ferment = (name: string, ...gravities: readonly number[]) => ({
  name,
  readings: gravities.map((gravity, index) => ({ timeH: 36 * index, gravity })),
});

function gravities(of = [ferment('Warm', 1.06, 1.02, 1), ferment('Cool', 1.06, 1.05)]) {
  const drawing = gravitiesFigure(of);
  if (drawing === null) throw new Error('no figure');
  return drawing;
}

test('gravities of several ferments are read off, each in a stroke of its own that its name stands beside', () => {
  const drawing = gravities();
  const read = readOff(drawing, 0, 190);
  const named = ['1  Warm', '2  Cool'].map((name) =>
    wordsOf(drawing).find(({ text }) => text === name),
  );
  const keys = named.map((words) =>
    pathsOf(drawing).find(
      ({ points, stroke }) =>
        stroke !== undefined &&
        points.length === 2 &&
        points.every(
          ([x, y]) => Math.abs(y + 3 - (words?.at[1] ?? 0)) < 0.01 && x < (words?.at[0] ?? 0),
        ),
    ),
  );
  const lines = keys.map((key) =>
    pathsOf(drawing).find(
      ({ stroke, points }) => stroke?.colour === key?.stroke?.colour && points !== key?.points,
    ),
  );
  expect(lines.map((line) => rounded((line?.points ?? []).map(read)))).toEqual([
    [
      [0, 1.06],
      [1.5, 1.02],
      [3, 1],
    ],
    [
      [0, 1.06],
      [1.5, 1.05],
    ],
  ]);
  expect(lines[0]?.stroke).not.toEqual(lines[1]?.stroke);
  expect(rounded(dotsOf(drawing).map(read))).toHaveLength(5);
  expect(drawing.altText).toBe('Gravities of 2 ferments over the days since each was begun.');
  expect(named[1]?.at[1]).toBeGreaterThan(named[0]?.at[1] ?? Number.NaN);
  expect(named[1]?.at[1]).toBeLessThan(drawing.heightPt);
});

test('a ferment read once is a dot', () => {
  const drawing = gravities([ferment('Warm', 1.06, 1.02), ferment('Cool', 1.05)]);
  expect(dotsOf(drawing)).toHaveLength(3);
  expect(pathsOf(drawing).filter(({ points }) => points.length === 1)).toEqual([]);
});

test('one ferment, more than can be told apart, or none read are not laid over each other', () => {
  const many = (count: number) =>
    Array.from({ length: count }, (_, index) => ferment(`F${index}`, 1.06, 1));
  expect([1, 6, 7].map((count) => gravitiesFigure(many(count)) === null)).toEqual([
    true,
    false,
    true,
  ]);
  expect(gravitiesFigure([ferment('A'), ferment('B')])).toBeNull();
});
