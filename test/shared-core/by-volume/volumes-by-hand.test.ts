import { describe, expect, test } from 'vitest';
import { defaultRunSettings, dewPoint, type RunInput } from '#shared-core';
import { moleFractionFromStrength } from '../../../shared-core/alcoholometry/strength-and-mole-fraction.ts';
import { balanceDoubt } from '../../../shared-core/by-volume/balance-doubt.ts';
import { type VolumePoint, volumeCourse } from '../../../shared-core/by-volume/volume-course.ts';
import { volumeReadings } from '../../../shared-core/by-volume/volume-reading.ts';
import { volumeVerdict } from '../../../shared-core/by-volume/volume-verdict.ts';

const exactly = (value: number) => ({ value, low: value - 2, high: value + 1 });
const point = (volumeMl: number, abv: number | null): VolumePoint => ({
  volumeMl,
  headC: 80,
  vapourAbv: abv === null ? null : exactly(abv),
  collectedAbv: abv === null ? null : exactly(abv),
});
/** Of points whose volumes were read. */
const verdictOf = (points: readonly VolumePoint[], wanted: Parameters<typeof volumeVerdict>[1]) =>
  volumeVerdict(
    {
      points,
      allMl: points.findLast(({ vapourAbv }) => vapourAbv !== null)?.volumeMl ?? 0,
      strengths: points.flatMap(({ volumeMl, vapourAbv }) =>
        vapourAbv === null ? [] : [{ volumeMl, abv: vapourAbv, stretch: null }],
      ),
    },
    wanted,
  );
const settings = {
  ...defaultRunSettings,
  leastStrengthAbv: 80,
  firstFraction: { kind: 'minutes', minutes: 2 },
} as const;
const limit = '80 % vol (83.3 °C at 101.3 kPa)';
const limitWords = (because: string) => because.replace(/\d\d\.\d °C at/, '83.3 °C at');

describe('up to which volume the vapour was as strong as wanted', () => {
  test('is read on a straight line between the last strong reading and the first weak one', () => {
    const { mainFraction, cuts, because } = verdictOf(
      [point(2, 90), point(4, 86), point(6, 78), point(8, 60)],
      settings,
    );
    // From 86 to 78 % vol within 2 mL: 80 % vol at 5.5 mL.
    expect(mainFraction).toBe(true);
    expect(cuts.map(({ cut, fromMl, toMl }) => [cut, fromMl, toMl])).toEqual([
      ['as-wanted', 0, 5.5],
      ['weaker', 5.5, 8],
    ]);
    // (2 · 90 + 2 · 88 + 1.5 · 83)/5.5, and (0.5 · 79 + 2 · 69)/2.5.
    const mean = (180 + 176 + 124.5) / 5.5;
    expect(cuts[0]?.meanAbv).toEqual({
      value: expect.closeTo(mean, 9),
      low: expect.closeTo(mean - 2, 9),
      high: expect.closeTo(mean + 1, 9),
    });
    expect(cuts[1]?.meanAbv.value).toBeCloseTo((39.5 + 138) / 2.5, 9);
    expect(limitWords(because)).toBe(
      `The vapour was as strong as ${limit} up to 5.5 mL, 85.4–88.4\u00a0% vol on average; what came later was weaker.`,
    );
  });

  test('goes up to where it fell for the last time, and as far as the readings where it never did', () => {
    const twice = verdictOf([point(2, 82), point(4, 70), point(6, 84), point(8, 76)], settings);
    expect(twice.cuts[0]?.toMl).toBeCloseTo(7, 9);
    const strong = verdictOf([point(2, 90), point(4, 90)], settings);
    expect(strong.cuts.map(({ cut, toMl }) => [cut, toMl])).toEqual([['as-wanted', 4]]);
    expect(strong.because).toContain('; the readings end before it grew weaker.');
    const justSo = verdictOf([point(2, 80), point(4, 70)], settings);
    expect(justSo.cuts[0]?.toMl).toBe(2);
    expect(justSo.because).toContain(
      ', so by the thermometer’s uncertainty it may have been weaker all along; what came',
    );
  });

  test('is none where it never was, or no reading is warm enough', () => {
    const weak = verdictOf([point(2, 60), point(4, 66), point(6, 50)], settings);
    expect(weak).toMatchObject({
      mainFraction: false,
      cuts: [{ cut: 'weaker', fromMl: 0, toMl: 6 }],
    });
    expect(limitWords(weak.because)).toBe(
      `At no volume was the vapour as strong as ${limit}: at its strongest it held 64.0–67.0\u00a0% vol, at 4 mL and 80.0 °C.`,
    );
    // Whole degrees often stand the same twice: the first is told.
    const even = verdictOf([point(2, 60), point(4, 66), point(6, 66)], settings);
    expect(even.because).toContain('it held 64.0–67.0\u00a0% vol, at 4 mL and');
    const cold = verdictOf([point(2, null), point(4, null)], settings);
    expect(cold).toMatchObject({ mainFraction: false, cuts: [] });
    expect(limitWords(cold.because)).toBe(
      `No reading is warm enough for vapour of ethanol and water, so nothing can be said of ${limit}.`,
    );
  });

  test('begins behind a first fraction that was set in millilitres', () => {
    const saidAfter = (volumeMl: number) =>
      verdictOf([point(2, 90), point(4, 86), point(6, 78), point(8, 60)], {
        ...settings,
        firstFraction: { kind: 'volume', volumeMl },
      });
    expect(saidAfter(1).cuts.map(({ cut, fromMl, toMl }) => [cut, fromMl, toMl])).toEqual([
      ['first', 0, 1],
      ['as-wanted', 1, 5.5],
      ['weaker', 5.5, 8],
    ]);
    expect(saidAfter(1).because).toMatch(
      /^After 1\.0 mL of first fraction the vapour was as strong as/,
    );
    expect(saidAfter(6)).toMatchObject({
      mainFraction: false,
      cuts: [
        { cut: 'first', fromMl: 0, toMl: 6 },
        { cut: 'weaker', fromMl: 6, toMl: 8 },
      ],
    });
    expect(limitWords(saidAfter(6).because)).toBe(
      `The vapour was as strong as ${limit} only up to 5.5 mL, within the 6.0 mL of the first fraction that were set: nothing was left for a main fraction.`,
    );
    expect(saidAfter(20).cuts.map(({ cut, toMl }) => [cut, toMl])).toEqual([['first', 8]]);
    expect(saidAfter(0).cuts[0]?.cut).toBe('as-wanted');
  });

  test('has a strength even where not a drop has come over yet', () => {
    const { cuts } = verdictOf([point(0, 60), point(0, 58)], settings);
    expect(cuts).toEqual([{ cut: 'weaker', fromMl: 0, toMl: 0, meanAbv: exactly(60) }]);
  });
});

describe('the course by volume', () => {
  test('has the strength of each head, calibrated, and the mean of all so far by the trapezium rule', () => {
    const pressure = { ...defaultRunSettings.pressure, standardUncertaintyKPa: 0.1 };
    const headC = (abv: number) =>
      dewPoint({ ethanolMoleFraction: moleFractionFromStrength(abv), pressureKPa: 101.325 })
        .temperatureC;
    const probe = { ...defaultRunSettings.probe, offsetK: 1, gain: 1.01 };
    const read = (abv: number) => (headC(abv) - 1) / 1.01;
    const { points: course } = volumeCourse(
      [
        { volumeMl: 0, headC: 20 },
        { volumeMl: 2, headC: read(80) },
        { volumeMl: 6, headC: read(60) },
      ],
      { probe, pressure: { ...pressure, source: 'barometer' } },
    );
    expect(course[0]).toMatchObject({
      vapourAbv: null,
      collectedAbv: null,
      headC: expect.closeTo(1 + 1.01 * 20, 9),
    });
    expect(course[1]?.headC).toBeCloseTo(headC(80), 9);
    expect(course[1]?.vapourAbv?.value).toBeCloseTo(80, 1);
    expect(course[1]?.collectedAbv?.value).toBeCloseTo(80, 1);
    // 2 mL of 80 and 4 mL from 80 to 60 % vol.
    expect(course[2]?.collectedAbv?.value).toBeCloseTo((160 + 280) / 6, 1);
    expect(course[2]?.collectedAbv?.low).toBeLessThan((160 + 280) / 6);
    expect(
      volumeCourse([{ volumeMl: 0, headC: read(80) }], { probe, pressure }).points[0]?.collectedAbv,
    ).toBeNull();
  });

  test('is that of a table without times, in the order of its volumes', () => {
    const reading = (
      channel: string,
      value: number,
      other: Partial<Extract<RunInput, { kind: 'reading' }>> = {},
    ): RunInput => ({
      kind: 'reading',
      timeS: 0,
      channel,
      value,
      unit: channel === 'head' ? '°C' : 'mL',
      quality: 'good',
      ...other,
    });
    const pair = (volumeMl: number, headC: number) => [
      reading('receiver', volumeMl),
      reading('head', headC),
    ];
    const three = [...pair(5, 85), ...pair(1, 80), ...pair(3, 82)];
    expect(volumeReadings(three)).toEqual([
      { volumeMl: 1, headC: 80 },
      { volumeMl: 3, headC: 82 },
      { volumeMl: 5, headC: 85 },
    ]);
    expect(volumeReadings(three.slice(0, 4))).toBeNull();
    expect(volumeReadings([...three, reading('head', 90, { timeS: 1 })])).toBeNull();
    expect(volumeReadings([...three, reading('head', 99)])).toHaveLength(3);
    expect(
      volumeReadings([...three, reading('receiver', 7, { unit: 'g' }), reading('head', 99)]),
    ).toHaveLength(3);
    expect(
      volumeReadings([...three, reading('receiver', 7), reading('head', 99, { quality: 'bad' })]),
    ).toHaveLength(3);
  });
});

describe('books that don’t agree with the thermometer', () => {
  const charge = { volumeMl: 100, strengthAbv: 10, standardUncertaintyAbv: 0.5 };
  const doubt = (headC: number, collected: number, volumeMl = 5) =>
    balanceDoubt(
      [
        {
          ...point(volumeMl, collected),
          headC,
          collectedAbv: { value: collected, low: collected, high: collected },
        },
      ],
      { charge, pressure: defaultRunSettings.pressure },
    );

  test('are those whose head is hotter than the pot can be, by more than two kelvins', () => {
    // 5 mL of 60 % vol out of 10 mL of ethanol leave 7 mL in 95 mL: 7.4 % vol, which boil at some 93.2 °C.
    const said = doubt(97, 60);
    expect(said).toMatch(
      /^The books don’t agree with the thermometer: by the temperatures 3\.0 mL of the 10\.0 mL of ethanol charged came over, which leaves a pot that boils at 93\.\d °C or below, yet the head read 97\.0 °C\./,
    );
    const potC = Number(/boils at (\d+\.\d)/.exec(said ?? '')?.[1]);
    expect(doubt(potC + 1.9, 60)).toBeNull();
    expect(doubt(potC + 2.1, 60)).not.toBeNull();
  });

  test('are none where nothing can be said', () => {
    expect(
      balanceDoubt([point(5, null)], { charge, pressure: defaultRunSettings.pressure }),
    ).toBeNull();
    expect(doubt(99, 60, 100)).toBeNull();
    expect(doubt(99, 95, 12)).toBeNull();
    // 50 mL of 20 % vol are all that there was.
    expect(doubt(104, 20, 50)).toBeNull();
  });
});
