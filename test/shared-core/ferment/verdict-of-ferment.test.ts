import { describe, expect, test } from 'vitest';
import { createRandom } from '#shared-core';
import type { FermentConclusion } from '../../../shared-core/ferment/conclude-ferment.ts';
import type { FermentReading } from '../../../shared-core/ferment/ferment-log.ts';
import { whyFerment } from '../../../shared-core/ferment/ferment-words.ts';
import type { FermentBelief } from '../../../shared-core/ferment/follow-ferment.ts';
import { judgeFerment, verdictOf } from '../../../shared-core/ferment/judge-ferment.ts';
import { drawFerments } from '../../../shared-core/ferment/possible-ferments.ts';
import { readingAt } from './support/at-hour.ts';

const about = (value: number, spread: number) => ({
  low: value - spread,
  value,
  high: value + spread,
});
const concluded: FermentConclusion = {
  state: 'working',
  strengthAbv: about(5.0444, 0.4),
  gravity: about(1.02, 0.002),
  originalGravity: about(1.060044, 0.001),
  endGravity: about(0.99604, 0.002),
  aboveUsualEnd: 0.024,
  isStill: false,
  tellsEnd: true,
  donePercent: about(62.4, 4),
  perDay: about(0.0091, 0.001),
  inTwoDays: about(0.018, 0.001),
  doneH: about(130.2, 20),
  nearProbability: 0,
  stuckProbability: 0,
};
const piece = (timeH: number, gravity: number | null) => ({
  timeH,
  gravity: gravity === null ? null : { value: gravity, uncertainty: 0.001 },
  massG: null,
  bubblesPerMin: null,
  temperatureC: null,
  isDegassed: false,
});
const litre = { volumeMl: 1000, sugarG: null };
const belief: FermentBelief = {
  cloud: drawFerments(createRandom('verdict'), litre, null),
  timeH: 60,
  warmthK: 0,
  temperatureC: null,
  evidence: [piece(0, 1.06), piece(60, 1.02)],
  gravityDoubts: [],
};
const gravities = [readingAt(0, { gravity: 1.06 }), readingAt(60, { gravity: 1.02 })];

const verdict = (
  changes: Partial<FermentConclusion> = {},
  beliefs: Partial<FermentBelief> = {},
  readings: readonly FermentReading[] = gravities,
  facts: Parameters<typeof verdictOf>[2] = litre,
) =>
  verdictOf(
    { belief: { ...belief, ...beliefs }, concluded: { ...concluded, ...changes } },
    readings,
    facts,
  );

test('a verdict is what was concluded, rounded as it is shown, with the reason in words', () => {
  expect(verdict()).toEqual({
    state: 'working',
    because: whyFerment(concluded, belief),
    strengthAbv: { low: 4.64, value: 5.04, high: 5.44 },
    expectedEndGravity: { low: 0.994, value: 0.996, high: 0.998 },
    finishH: { low: 110, value: 130, high: 150 },
    originalGravity: { low: 1.059, value: 1.06, high: 1.061 },
    donePercent: { low: 58, value: 62, high: 66 },
    problems: [],
  });
});

test('before anything was read there is a verdict too', () => {
  const nothing = {
    state: 'not-started',
    because: 'Nothing was read yet.',
    strengthAbv: null,
    expectedEndGravity: null,
    finishH: null,
    originalGravity: null,
    donePercent: null,
    problems: [],
  };
  expect(verdictOf(null, [], litre)).toEqual(nothing);
  expect(judgeFerment([], litre)).toEqual(nothing);
});

test('no strength is below nothing, and an end that cannot be told is none', () => {
  expect(verdict({ strengthAbv: about(0.1, 0.3) }).strengthAbv).toEqual({
    low: 0,
    value: 0.1,
    high: 0.4,
  });
  expect(verdict({ strengthAbv: about(-0.4, 0.3) }).strengthAbv).toEqual({
    low: 0,
    value: 0,
    high: 0,
  });
  expect(verdict({ doneH: null }).finishH).toBeNull();
});

test('the end and the original are told where a gravity was read; the end also where the sugar is known', () => {
  const weighed = [readingAt(0, { massG: 1500 }), readingAt(60, { massG: 1480 })];
  const { expectedEndGravity, originalGravity, problems } = verdict({}, {}, weighed);
  expect([expectedEndGravity, originalGravity, problems]).toEqual([null, null, []]);
  const sweet = verdict({}, {}, weighed, { volumeMl: 1000, sugarG: 170 });
  expect([sweet.expectedEndGravity?.value, sweet.originalGravity]).toEqual([0.996, null]);
  const mixed = verdict({}, {}, [weighed[0]!, gravities[1]!]);
  expect([mixed.expectedEndGravity?.value, mixed.originalGravity?.value]).toEqual([0.996, 1.06]);
});

test('the end is told in the hours of the log, also where that begins late', () => {
  // The belief counts from the first reading, a hundred hours after the log's beginning.
  const late = { evidence: [piece(100, 1.06), piece(160, 1.02)] };
  expect(verdict({}, late).finishH).toEqual({ low: 210, value: 230, high: 250 });
  expect(verdict({}, { evidence: [] }).finishH).toEqual({ low: 110, value: 130, high: 150 });
});

test('temperatures alone are said to tell nothing, and any other reading tells something', () => {
  const problemsOf = (read: Partial<FermentReading>) =>
    verdict({}, {}, [readingAt(0, { temperatureC: 20 }), readingAt(12, read)]).problems;
  expect(problemsOf({ temperatureC: 21 })).toEqual([
    'Temperatures alone tell nothing of a ferment: add gravity, mass or bubbles a minute.',
  ]);
  expect([
    problemsOf({ gravity: 1.05 }),
    problemsOf({ massG: 1500 }),
    problemsOf({ bubblesPerMin: 3 }),
  ]).toEqual([[], [], []]);
});

describe('a doubt', () => {
  const firstDoubt = (gravity: number | null) =>
    verdict({ originalGravity: about(1.07, 0.002) }, { evidence: [piece(0, gravity)] }).problems;

  test('falls on a first gravity beyond three of its uncertainties outside the interval', () => {
    // 1.068 to 1.072, and 0.003 to either side.
    expect([firstDoubt(1.0651), firstDoubt(1.0749), firstDoubt(null)]).toEqual([[], [], []]);
    expect(firstDoubt(1.0649)).toEqual([
      'The first gravity, 1.065, does not fit what came after and is not believed: was it read before the liquid was mixed, or had it begun to ferment?',
    ]);
    expect(firstDoubt(1.0751)[0]).toMatch(/^The first gravity, 1\.075, does not fit/);
  });

  test('falls on a gravity that was more likely than 0.8 misread', () => {
    const doubts = (probability: number) =>
      verdict({}, { gravityDoubts: [{ evidence: piece(68.4, 1.0702), probability }] }).problems;
    expect(doubts(0.8)).toEqual([]);
    expect(doubts(0.81)).toEqual([
      'The gravity 1.070 after 68 h does not fit the others and is hardly counted: read it again.',
    ]);
  });
});
