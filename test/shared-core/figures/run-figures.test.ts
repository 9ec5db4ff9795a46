import { beforeAll, expect, test } from 'vitest';
import { azeotrope, type Drawing, type RunStudy, studyRun } from '#shared-core';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { ethanolFigure } from '../../../shared-core/figures/ethanol-figure.ts';
import { plateauFigure } from '../../../shared-core/figures/plateau-figure.ts';
import { strengthFigure } from '../../../shared-core/figures/strength-figure.ts';
import { temperatureFigure } from '../../../shared-core/figures/temperature-figure.ts';
import { pearRun } from '../report/support/pear-run.ts';
import { pathsOf, readOff, rounded, wordsOf } from './support/read-off.ts';

let study: RunStudy;
beforeAll(() => {
  const whole = studyRun(pearRun().run);
  // Few rows, so that each can be read off: ten minutes on the plateau, then up.
  const rows = Array.from({ length: 21 }, (_, index) => ({
    timeS: 1200 + 30 * index,
    headC: index < 15 ? 78.5 : 78.5 + (index - 14),
    readings: 30,
    pressureKPa: 99.4,
    stage: 'main-fraction' as const,
    aboveAzeotropeK: 0.5,
    isBathed: true,
    vapourAbv: { value: 94 - index, low: 91 - index, high: 96 - index / 2 },
  }));
  study = { ...whole, rows };
});

const whole = { stages: true, plateauBand: true };
const drawn = (drawing: Drawing | null): Drawing => {
  if (drawing === null) throw new Error('no figure');
  return drawing;
};
const lineOf = (drawing: Drawing, colour: string, least = 5) =>
  pathsOf(drawing).find(
    ({ stroke, points, closed }) =>
      stroke?.colour === colour && points.length >= least && closed !== true,
  )?.points ?? [];
const onlyY = (pairs: readonly (readonly number[])[]) => pairs.map(([, y]) => y);

test('head temperatures are read off at their times, between the limit and the azeotrope of the air pressure', () => {
  const drawing = temperatureFigure(study, whole);
  const read = readOff(drawing, 0, 230);
  expect(rounded(lineOf(drawing, '#17152b').map(read), 3)).toEqual(
    rounded(
      study.rows.map(({ timeS, headC }) => [timeS, headC]),
      3,
    ),
  );
  const pressureKPa = study.plateau?.pressureKPa ?? Number.NaN;
  const limitC = limitTemperatureC({ leastStrengthAbv: 80, pressureKPa });
  const azeotropeC = azeotrope(pressureKPa).temperatureC;
  const [band] = pathsOf(drawing);
  expect(band?.fill).toBe('#d5ebd9');
  const ends = [limitC, limitC, azeotropeC, azeotropeC];
  expect(onlyY(rounded((band?.points ?? []).map(read), 3))).toEqual(
    ends.map((at) => Number(at.toFixed(3))),
  );
  const edges = pathsOf(drawing).filter(({ stroke }) => stroke?.colour === '#117733');
  expect(edges.map(({ points }) => onlyY(rounded(points.map(read), 3)))).toEqual(
    [limitC, azeotropeC].map((at) => [Number(at.toFixed(3)), Number(at.toFixed(3))]),
  );
  // The limit is dashed, the azeotrope is not.
  expect(edges.map(({ stroke }) => stroke?.dash !== undefined)).toEqual([true, false]);
});

test('what people did stands over a dotted line at its time', () => {
  const drawing = temperatureFigure(study, whole);
  const read = readOff(drawing, 0, 230);
  const flags = wordsOf(drawing).filter(({ text }) =>
    /^(heat on|eased|receiver|heat off)$/.test(text),
  );
  const dotted = pathsOf(drawing).filter(({ stroke }) => stroke?.dash?.join() === '1,3');
  const times = [0, 600, 1080, 2900, 3000];
  expect(dotted.map(({ points }) => points.map((at) => Math.round(read(at)[0])))).toEqual(
    times.map((timeS) => [timeS, timeS]),
  );
  expect(flags.map(({ text }) => text)).toEqual([
    'heat on',
    'eased',
    'receiver',
    'receiver',
    'heat off',
  ]);
  expect(flags.slice(1).map(({ at }) => Math.round(read([at[0], 0])[0]))).toEqual(times.slice(1));
  // The last two would lie over each other: the later one goes up a row.
  const [receiver, off] = flags.slice(-2);
  expect((receiver?.at[1] ?? 0) - (off?.at[1] ?? 0)).toBe(10);
  expect(off?.at[1]).toBeGreaterThan(8);
});

test('the stages stand below in the order and for the time they lasted, each with its name', () => {
  const first = study.verdicts.stages[0]!;
  const spans = (
    [
      ['warm-up', 0, 900],
      ['first-fraction', 900, 1000],
      ['main-fraction', 1000, 4200],
      ['tail', 4200, null],
    ] as const
  ).map(([stage, fromS, toS]) => ({ ...first, stage, fromS, toS }));
  const drawing = temperatureFigure(
    { ...study, verdicts: { ...study.verdicts, stages: spans } },
    whole,
  );
  const read = readOff(drawing, 0, 230);
  const boxes = pathsOf(drawing).filter(({ stroke, fill }) => stroke?.colour === '#ffffff' && fill);
  expect(
    boxes.map(({ points }) => [points[0], points[1]].map((at) => Math.round(read(at!)[0]))),
  ).toEqual([
    [0, 900],
    [900, 1000],
    [1000, 4200],
    [4200, 4800],
  ]);
  const names = [
    'Warm-up',
    'Low-boiling first fraction',
    'Main ethanol fraction',
    'Water-rich tail',
  ];
  const placed = names.map((name) => wordsOf(drawing).find(({ text }) => text === name));
  const [, bottom] = boxes[0]?.points[2] ?? [0, 0];
  // Names that fit stand inside on a white ground, the others below.
  expect(placed.map((words) => (words?.at[1] ?? 0) < bottom)).toEqual([true, false, true, false]);
  const grounds = pathsOf(drawing).filter(
    ({ fill, stroke }) => fill === '#ffffff' && stroke === undefined,
  );
  expect(grounds.map(({ points }) => ((points[0]?.[0] ?? 0) + (points[1]?.[0] ?? 0)) / 2)).toEqual(
    [placed[0], placed[2]].map((words) => words?.at[0]),
  );
  // Both below have room beside each other, within the axis.
  expect(placed[1]?.at[1]).toBe(placed[3]?.at[1]);
  expect(drawing.heightPt).toBeGreaterThan(placed[1]?.at[1] ?? Number.NaN);
  expect(drawing.altText).toContain(
    ' Stages: Warm-up from 0:00:00, Low-boiling first fraction from 0:15:00, Main ethanol fraction from 0:16:40, Water-rich tail from 1:10:00.',
  );
});

test('its words tell how long the run was and where the head held', () => {
  const { altText } = temperatureFigure(study, { stages: false, plateauBand: true });
  const { mean, statistics } = study.plateau!;
  const minutes = Math.round((statistics.span.toS - statistics.span.fromS) / 60);
  expect(altText).toBe(
    `Head temperature of “Pear-juice ferment” over 80 min. The head held at ${mean.value.toFixed(1)} °C for ${minutes} min.`,
  );
  expect(
    temperatureFigure({ ...study, imported: true }, { stages: false, plateauBand: false }).altText,
  ).toBe('Head temperature of “Pear-juice ferment” over 80 min, imported from a file.');
});

test('strengths are read off with their interval, over the limit', () => {
  const drawing = drawn(strengthFigure(study));
  const read = readOff(drawing);
  const times = study.rows.map(({ timeS }) => timeS);
  const of = (end: 'value' | 'low' | 'high') =>
    study.rows.map(({ timeS, vapourAbv }) => [timeS, vapourAbv?.[end] ?? 0]);
  expect(rounded(lineOf(drawing, '#17152b').map(read), 3)).toEqual(of('value'));
  const [band] = pathsOf(drawing);
  expect(rounded((band?.points ?? []).map(read), 3)).toEqual([
    ...of('low'),
    ...of('high').toReversed(),
  ]);
  expect(rounded(lineOf(drawing, '#117733', 2).map(read), 3)).toEqual([
    [times[0], 80],
    [times.at(-1), 80],
  ]);
  expect(drawing.altText).toBe(
    'Strength of the head vapour of “Pear-juice ferment” with its 95 % interval, from 94 to 74 % vol.',
  );
});

test('strength is drawn wherever it was told, of a minute of vapour at least, whatever was marked of the heat', () => {
  const of = (count: number, untoldAt = -1) => ({
    ...study,
    // The heat was marked off at 3000 s.
    rows: study.rows.slice(0, count).map((row, index) => ({
      ...row,
      timeS: 2700 + 30 * index,
      vapourAbv: index === untoldAt ? null : row.vapourAbv,
    })),
  });
  expect(lineOf(drawn(strengthFigure(of(21))), '#17152b')).toHaveLength(21);
  expect(lineOf(drawn(strengthFigure(of(21, 15))), '#17152b')).toHaveLength(20);
  expect(strengthFigure(of(3))).not.toBeNull();
  expect(strengthFigure(of(2))).toBeNull();
  expect(strengthFigure(of(3, 2))).toBeNull();
});

test('the sheet of the plateau has a line for every degree, and shows where it lies to the teacher only', () => {
  const [asked, solved] = [false, true].map((isSolved) => drawn(plateauFigure(study, isSolved)));
  const read = readOff(asked!);
  expect(rounded(lineOf(asked!, '#17152b').map(read), 3)[0]).toEqual([1200, 78.5]);
  const degrees = wordsOf(asked!).flatMap(({ text, anchor }) =>
    anchor === 'end' ? [Number(text)] : [],
  );
  // From 1.5 K below the azeotrope to 1.5 K above the limit, in whole degrees outwards.
  const pressureKPa = study.plateau!.pressureKPa;
  const low = Math.floor(azeotrope(pressureKPa).temperatureC - 1.5);
  const high = Math.ceil(limitTemperatureC({ leastStrengthAbv: 80, pressureKPa }) + 1.5);
  expect(degrees).toEqual(Array.from({ length: high - low + 1 }, (_, index) => low + index));
  expect(asked!.altText).toBe(
    `Head temperature of “Pear-juice ferment” between ${low} and ${high} °C, with a line for every degree.`,
  );
  const told = [asked!, solved!].map((one) => wordsOf(one).some(({ text }) => text === 'plateau'));
  expect(told).toEqual([false, true]);
  const shaded = [asked!, solved!].map((one) =>
    pathsOf(one).some(({ fill }) => fill === '#d5ebd9'),
  );
  expect(shaded).toEqual([false, true]);
  const { lowestC, highestC } = study.plateau!.statistics;
  const area = pathsOf(solved!).find(({ fill }) => fill === '#d5ebd9')?.points ?? [];
  expect(onlyY(rounded(area.map(read), 3))).toEqual(
    [highestC, highestC, lowestC, lowestC].map((at) => Number(at.toFixed(3))),
  );
  expect(plateauFigure({ ...study, plateau: null }, true)).toBeNull();
});

test('the bar of ethanol is as long as the charge, each part as long as its grams, and its rest is empty', () => {
  const { books } = study;
  const drawing = drawn(ethanolFigure(books));
  const charged = books.charge.ethanolG.value;
  const parts = [
    ...books.cuts.map(
      ({ number, booked }) => [`Cut ${number}`, booked?.ethanolG.value ?? 0] as const,
    ),
    ['Residue', books.balance!.ethanol.residueG!.value] as const,
  ];
  const rest = charged - parts.reduce((sum, [, grams]) => sum + grams, 0);
  const words = [...parts, ['Missing', rest] as const].map(
    ([name, grams]) => `${name}: ${grams.toFixed(1)} g`,
  );
  expect(wordsOf(drawing).map(({ text }) => text)).toEqual([
    `Ethanol charged: ${charged.toFixed(1)} g`,
    ...words,
  ]);
  // The bar lies from 18 to 44 pt.
  const inBar = pathsOf(drawing).filter(
    ({ points }) => points.length > 3 && points[0]?.[1] === 18 && points[2]?.[1] === 44,
  );
  const ends = inBar.map(({ points }) => [points[0]![0], points[1]![0]]);
  const perG = (ends.at(-1)![1]! - ends[0]![0]!) / charged;
  expect(ends.map(([from = 0, to = 0]) => Number(((to - from) / perG).toFixed(6)))).toEqual(
    [...parts.map(([, grams]) => grams), rest].map((grams) => Number(grams.toFixed(6))),
  );
  for (const [index, [from]] of ends.slice(1).entries()) expect(from).toBe(ends[index]?.[1]);
  expect(inBar.at(-1)?.stroke?.dash).toEqual([3, 2]);
  expect(drawing.altText).toBe(
    `Where the ${charged.toFixed(1)} g of ethanol went: ${words.map((word) => word.replace(':', '')).join(', ')}.`,
  );
});

test('ethanol of which the residue was not measured is said to be unmeasured, and a key goes on in a second row', () => {
  const { books } = study;
  const { balance } = books;
  const unmeasured = drawn(
    ethanolFigure({
      ...books,
      balance: balance && { ...balance, ethanol: { ...balance.ethanol, residueG: null } },
    }),
  );
  const [, ...key] = wordsOf(unmeasured);
  expect(key.map(({ text }) => text.replace(/:.*/, ''))).toEqual([
    'Cut 1',
    'Cut 2',
    'Cut 3',
    'Not measured',
  ]);
  expect(key[3]!.at[1] - key[0]!.at[1]).toBe(14);
  expect(key[3]!.at[0]).toBe(key[0]!.at[0]);
  expect(key[1]!.at[0]).toBeGreaterThan(key[0]!.at[0]);
  expect(unmeasured.heightPt).toBeGreaterThan(key[3]!.at[1]);
  expect(ethanolFigure({ ...books, balance: null })).toBeNull();
});
