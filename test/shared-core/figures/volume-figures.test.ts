import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import {
  type RunOfVolumes,
  strengthByVolumeFigure,
  temperatureByVolumeFigure,
} from '../../../shared-core/figures/volume-figures.ts';
import { dotsOf, pathsOf, readOff, rounded, wordsOf } from './support/read-off.ts';

const at = (volumeMl: number, headC: number, strengthAbv: number | null) => ({
  volumeMl,
  headC,
  vapourAbv:
    strengthAbv === null
      ? null
      : { value: strengthAbv, low: strengthAbv - 3, high: strengthAbv + 2 },
  collectedAbv: null,
  simple: null,
  column: null,
});

/** Five readings in rising volume, the first too cool for vapour; a simple still and a column beside them. */
const run: RunOfVolumes = {
  name: 'Pear',
  settings: {
    ...defaultRunSettings,
    leastStrengthAbv: 80,
    pressure: { ...defaultRunSettings.pressure, pressureKPa: 101.325 },
  },
  byVolume: {
    basis: 'table',
    pressureKPa: 101.325,
    course: [at(0, 77, null), at(5, 78.5, 94), at(10, 79, 92), at(20, 85, 76), at(30, 95, 40)],
    verdict: { mainFraction: true, because: '', cuts: [] },
    collected: null,
    rayleigh: [
      { volumeMl: 0, headC: 92, strengthAbv: 55 },
      { volumeMl: 30, headC: 97, strengthAbv: 30 },
    ],
    rectified: [
      { volumeMl: 0, headC: 79, strengthAbv: 90 },
      { volumeMl: 25, headC: 80, strengthAbv: 88 },
    ],
    doubt: null,
    aboveRayleighK: null,
  },
};

const strokes = (colour: string, drawing: Parameters<typeof pathsOf>[0]) =>
  pathsOf(drawing).filter(({ stroke }) => stroke?.colour === colour);
const figure = (expected: boolean, of = run) => {
  const drawing = temperatureByVolumeFigure(of, { expected });
  if (drawing === null) throw new Error('no figure');
  return drawing;
};
const strength = (of = run) => {
  const drawing = strengthByVolumeFigure(of);
  if (drawing === null) throw new Error('no figure');
  return drawing;
};
const measured = [
  [0, 77],
  [5, 78.5],
  [10, 79],
  [20, 85],
  [30, 95],
];

test('head temperatures are read off at the volumes they were read at, each with its dot', () => {
  const drawing = figure(true);
  const read = readOff(drawing);
  const [line] = strokes('#17152b', drawing).filter(({ points }) => points.length === 5);
  expect(rounded((line?.points ?? []).map(read))).toEqual(measured);
  expect(rounded(dotsOf(drawing).map(read))).toEqual(measured);
  expect(drawing.altText).toBe(
    'Head temperature of “Pear” against the volume of distillate: from 77.0 to 95.0 °C at 30.0 mL.',
  );
});

test('a simple still and the column are drawn beside it and named in a key, each in its own stroke', () => {
  const drawing = figure(true);
  const read = readOff(drawing);
  const [[still, stillKey], [column, columnKey]] = [
    strokes('#882255', drawing),
    strokes('#332288', drawing),
  ];
  expect(rounded((still?.points ?? []).map(read))).toEqual([
    [0, 92],
    [30, 97],
  ]);
  expect(rounded((column?.points ?? []).map(read))).toEqual([
    [0, 79],
    [25, 80],
  ]);
  expect([still, column].map((path) => path?.stroke?.dash)).toEqual(
    [stillKey, columnKey].map((path) => path?.stroke?.dash),
  );
  expect(still?.stroke?.dash).not.toEqual(column?.stroke?.dash);
  const key = wordsOf(drawing).slice(-3);
  expect(key.map(({ text }) => text)).toEqual([
    'measured',
    'simple still (Rayleigh)',
    'the column at the reflux entered',
  ]);
  // A row each, its line at the height of its words, all within the drawing.
  const keyLines = pathsOf(drawing).slice(-3);
  for (const [index, { at, sizePt }] of key.entries()) {
    const [from, to] = keyLines[index]?.points ?? [];
    expect(from?.[1]).toBe(to?.[1]);
    expect(to?.[0]).toBeLessThan(at[0]);
    expect(at[1] - (from?.[1] ?? 0)).toBeLessThan(sizePt / 2);
    expect(at[1]).toBeLessThan(drawing.heightPt);
    expect(at[1] - (key[index - 1]?.at[1] ?? 0)).toBeGreaterThan(sizePt);
  }
});

test('a worksheet’s figure shows what was measured only, and is lower for want of a key', () => {
  const bare = figure(false);
  expect([...strokes('#882255', bare), ...strokes('#332288', bare)]).toEqual([]);
  expect(wordsOf(bare).some(({ text }) => /limit|measured/.test(text))).toBe(false);
  expect(strokes('#117733', bare)).toEqual([]);
  expect(bare.heightPt).toBeLessThan(figure(true).heightPt);
});

test('strengths are read off with their interval and their limit, from the first vapour on', () => {
  const drawing = strength();
  const read = readOff(drawing);
  const [line] = strokes('#17152b', drawing).filter(({ points }) => points.length === 4);
  expect(rounded((line?.points ?? []).map(read))).toEqual([
    [5, 94],
    [10, 92],
    [20, 76],
    [30, 40],
  ]);
  const [band] = pathsOf(drawing);
  expect(rounded((band?.points ?? []).map(read))).toEqual([
    [5, 91],
    [10, 89],
    [20, 73],
    [30, 37],
    [30, 42],
    [20, 78],
    [10, 94],
    [5, 96],
  ]);
  expect(band?.closed).toBe(true);
  const [limit] = strokes('#117733', drawing);
  expect((limit?.points ?? []).map((point) => read(point)[1].toFixed(6))).toEqual([
    '80.000000',
    '80.000000',
  ]);
  expect(rounded((strokes('#882255', drawing)[0]?.points ?? []).map(read))).toEqual([
    [0, 55],
    [30, 30],
  ]);
  expect(drawing.altText).toBe(
    'Strength of the vapour of “Pear” against the volume of distillate, from 94 to 40 % vol.',
  );
});

test('the words of the limit stand at the end that is farther from every curve', () => {
  const limitOf = (course: readonly ReturnType<typeof at>[]) => {
    const byVolume = run.byVolume && { ...run.byVolume, course, rayleigh: null, rectified: null };
    return wordsOf(strength({ ...run, byVolume })).find(({ text }) => /^limit/.test(text));
  };
  expect(limitOf([at(0, 79, 81), at(15, 80, 60), at(30, 81, 40)])).toMatchObject({
    anchor: 'end',
    text: 'limit: 80 % vol',
  });
  expect(limitOf([at(0, 79, 96), at(15, 80, 90), at(30, 81, 81)])).toMatchObject({
    anchor: 'start',
  });
});

test('more than 40 readings are a line without dots', () => {
  const many = (count: number) => ({
    ...run,
    byVolume: run.byVolume && {
      ...run.byVolume,
      course: Array.from({ length: count }, (_, index) => at(index, 80, 90)),
    },
  });
  expect([40, 41].map((count) => dotsOf(figure(true, many(count))).length)).toEqual([40, 0]);
});

test('there is no figure without volumes, and none of strength without two readings in vapour', () => {
  expect(temperatureByVolumeFigure({ ...run, byVolume: null }, { expected: true })).toBeNull();
  expect(strengthByVolumeFigure({ ...run, byVolume: null })).toBeNull();
  const course = [at(0, 77, null), at(5, 78, 94)];
  expect(
    strengthByVolumeFigure({ ...run, byVolume: run.byVolume && { ...run.byVolume, course } }),
  ).toBeNull();
});

test('readings of another logger are said to be imported', () => {
  const said = (imported: boolean) =>
    wordsOf(figure(true, { ...run, imported })).some(({ text }) => text === 'imported readings');
  expect([said(true), said(false)]).toEqual([true, false]);
});
