import { describe, expect, test } from 'vitest';
import { booksOfRun, defaultRunSettings, type MarkBody, type RunInput } from '#shared-core';
import { batchByVolume } from '../../../shared-core/by-volume/batch-by-volume.ts';
import {
  type RunAgainstVolume,
  runByVolume,
} from '../../../shared-core/by-volume/run-by-volume.ts';

const charge = { volumeMl: 100, strengthAbv: 20, standardUncertaintyAbv: 0.5 };
const pressure = { ...defaultRunSettings.pressure, pressureKPa: 101.325 };
const probe = { ...defaultRunSettings.probe, lagT90S: 30, offsetK: 0.5, gain: 1.02 };
const settings = { ...defaultRunSettings, charge, pressure, probe };
const of = (changes: Partial<RunAgainstVolume>) =>
  runByVolume({ settings, inputs: [], rows: [], refluxRatio: null, distillate: null, ...changes });

const rowsEvery = (stepS: number, fromS: number, untilS: number) =>
  Array.from({ length: (untilS - fromS) / stepS + 1 }, (_, index) => ({
    timeS: fromS + stepS * index,
    headC: 84 + 0.1 * index,
    isBathed: true,
    vapourAbv: { value: 75, low: 74, high: 76 },
  }));
const marked = (...marks: readonly (readonly [number, MarkBody])[]): readonly RunInput[] =>
  marks.map(([timeS, mark], index) => ({ kind: 'mark', timeS, markId: index + 1, mark }));
const heatOff = { type: 'heat-off' } as const;
const read = (volumeMl: number) => ({ type: 'volume-read', volumeMl }) as const;

/** Vapour from 300 s on. A bulb with a t90 of 30 s has followed it at 360 s. */
const rows = [
  { timeS: 240, headC: 60, isBathed: false, vapourAbv: null },
  ...rowsEvery(60, 300, 1500),
  { timeS: 1560, headC: 70, isBathed: false, vapourAbv: null },
];
const estimatesOf = (seen: RunAgainstVolume['rows'], abvAt: (timeS: number) => number = () => 75) =>
  seen.flatMap(({ timeS, vapourAbv }) => {
    const value = abvAt(timeS);
    return vapourAbv === null
      ? []
      : [{ timeS, headVapourAbv: { value, low: value - 1, high: value + 1 } }];
  });
/** What the books make of such a run: vapour of 75 % vol while the rows have any. */
const distilled = ({
  rows: seen = rows,
  inputs = [],
  endS = 1800,
  dripRateMlPerMin = 1,
  abvAt = () => 75,
}: {
  readonly rows?: RunAgainstVolume['rows'];
  readonly inputs?: readonly RunInput[];
  readonly endS?: number;
  readonly dripRateMlPerMin?: number | null;
  readonly abvAt?: (timeS: number) => number;
}) => {
  const { distillate } = booksOfRun({
    settings,
    inputs,
    endS,
    verdicts: { estimates: estimatesOf(seen, abvAt), events: [] },
    entries: dripRateMlPerMin === null ? undefined : { cuts: [], dripRateMlPerMin },
  });
  return of({ rows: seen, inputs, distillate });
};
const pairs = (found: ReturnType<typeof of>) =>
  found?.course.map(({ volumeMl, headC }) => [volumeMl, headC]);

describe('a run whose volume is known over time', () => {
  test('has the calibrated head at each volume, from when the bulb has followed the front until the heat went off', () => {
    const found = distilled({ inputs: marked([900, heatOff]) });
    expect(found?.basis).toBe('drip-rate');
    // One millilitre a minute since 300 s.
    expect(pairs(found)).toEqual(
      Array.from({ length: 10 }, (_, index) => [
        expect.closeTo(index + 1, 9),
        expect.closeTo(84.1 + 0.1 * index, 9),
      ]),
    );
  });

  test('goes on to the last time that the heat was put off, or as long as vapour is there, or to its end', () => {
    const lastMl = (run: Parameters<typeof distilled>[0]) =>
      distilled(run)?.course.at(-1)?.volumeMl;
    const byHand = marked([600, heatOff], [660, { type: 'heat-on' }], [1200, heatOff]);
    expect(lastMl({ inputs: byHand })).toBeCloseTo(15, 9);
    expect(lastMl({})).toBeCloseTo(20, 9);
    expect(lastMl({ endS: 840 })).toBeCloseTo(9, 9);
    expect(lastMl({ inputs: marked([1700, heatOff]) })).toBeCloseTo(20, 9);
    expect(lastMl({ inputs: marked([600, { type: 'heat-eased' }]) })).toBeCloseTo(20, 9);
    // A flame that is put back under goes on heating.
    expect(lastMl({ inputs: marked([600, heatOff], [660, { type: 'heat-on' }]) })).toBeCloseTo(
      20,
      9,
    );
  });

  test('has volumes on a straight line between those that were read, and none beyond the last', () => {
    const found = distilled({
      inputs: marked([540, read(8)], [840, read(13)], [1200, { type: 'note', text: 'pear' }]),
    });
    expect(found?.basis).toBe('booked');
    expect(found?.course.map(({ volumeMl }) => volumeMl)).toEqual(
      [2, 4, 6, 8, 9, 10, 11, 12, 13].map((volumeMl) => expect.closeTo(volumeMl, 9)),
    );
  });

  test('makes a volume of a mass by the strength at that time', () => {
    const weighed = [300, 600, 900].map(
      (timeS, index): RunInput => ({
        kind: 'reading',
        timeS,
        channel: 'receiver',
        value: 8.594 * index,
        unit: 'g',
        quality: 'good',
      }),
    );
    // 80 % vol are 859.4 kg/m³ at 20 °C, 40 % vol 948.1 kg/m³ (OIML R 22).
    const abvAt = (timeS: number) => (timeS < 840 ? 80 : 40);
    // A receiver is weighed empty, before there is any vapour.
    const empty = marked([200, { type: 'mass-read', massG: 0 }]);
    expect(distilled({ inputs: empty, dripRateMlPerMin: null })).toBeNull();
    const found = distilled({ inputs: weighed, abvAt });
    const at = (volumeMl: number) =>
      found?.course.some((point) => Math.abs(point.volumeMl - volumeMl) < 0.01);
    expect([at(10), at(10 + 8.594 / 0.9481), found?.basis]).toEqual([true, true, 'receiver-mass']);
  });

  test('shows some two hundred points of a long run, first and last among them', () => {
    const long = (count: number) => {
      const course = distilled({ rows: rowsEvery(1, 300, 299 + count), endS: 9000 })?.course;
      return [course?.length, course?.[0]?.volumeMl, course?.at(-1)?.volumeMl];
    };
    // The first sixty seconds are the bulb's.
    expect(long(260)).toEqual([200, expect.closeTo(1, 9), expect.closeTo(259 / 60, 9)]);
    expect(long(460)).toEqual([201, expect.closeTo(1, 9), expect.closeTo(459 / 60, 9)]);
    expect(long(461)).toEqual([135, expect.closeTo(1, 9), expect.closeTo(460 / 60, 9)]);
  });

  test('is none without vapour, without volumes, or with fewer than three points', () => {
    expect(distilled({ rows: rows.map((row) => ({ ...row, vapourAbv: null })) })).toBeNull();
    expect(distilled({ dripRateMlPerMin: null })).toBeNull();
    expect(distilled({ endS: 479 })).toBeNull();
    expect(distilled({ endS: 480 })?.course).toHaveLength(3);
  });
});

/** A table by volume, as a thermometer without error would have it. */
const table = (points: readonly (readonly [volumeMl: number, headC: number])[]) =>
  points.flatMap(([volumeMl, headC]): RunInput[] => [
    {
      kind: 'reading',
      timeS: 0,
      channel: 'receiver',
      value: volumeMl,
      unit: 'mL',
      quality: 'good',
    },
    { kind: 'reading', timeS: 0, channel: 'head', value: headC, unit: '°C', quality: 'good' },
  ]);
const exact = { ...settings, probe: { ...probe, offsetK: 0, gain: 1 } };
const ofTable = (
  points: Parameters<typeof table>[0],
  changes: Partial<typeof settings> = {},
  refluxRatio: number | null = null,
) => of({ settings: { ...exact, ...changes }, inputs: table(points), refluxRatio });

describe('the air pressure that a run against volume is reckoned by', () => {
  const guessed = { ...exact, pressure: { ...pressure, source: 'assumed' as const } };
  const barometer = [600, 660, 720].map(
    (timeS): RunInput => ({
      kind: 'reading',
      timeS,
      channel: 'air-pressure',
      value: 94.2,
      unit: 'kPa',
      quality: 'good',
    }),
  );
  const readKPa = (pressureKPa: number) => marked([500, { type: 'pressure-read', pressureKPa }]);

  test.each([
    ['that of its settings', guessed, [], 101.325, pressure.standardUncertaintyKPa],
    // A barometer is believed within 0.3 kPa.
    ['what a barometer on the line showed', guessed, barometer, 94.2, 0.3],
    ['what somebody read', exact, readKPa(97), 97, 0.3],
  ])('is %s', (_, known, inputs, pressureKPa, standardUncertaintyKPa) => {
    const { distillate } = booksOfRun({
      settings,
      inputs: [],
      endS: 1800,
      verdicts: { estimates: estimatesOf(rows), events: [] },
      entries: { cuts: [], dripRateMlPerMin: 1 },
    });
    const found = of({ settings: known, inputs, rows, distillate });
    const at = of({
      settings: { ...exact, pressure: { ...known.pressure, pressureKPa, standardUncertaintyKPa } },
      rows,
      distillate,
    });
    const told = (run: typeof found) => [
      run?.pressureKPa,
      run?.course.map(({ vapourAbv }) => vapourAbv?.value),
      run?.rayleigh,
      run?.verdict.because,
    ];
    expect(told(found)).toEqual(told(at));
    expect(found?.pressureKPa).toBe(pressureKPa);
  });
});

describe('what theory expects beside it', () => {
  const upToMl = 24;
  const simple = batchByVolume({
    chargeMl: 100,
    chargeAbv: 20,
    pressureKPa: 101.325,
    upToMl,
    column: null,
  });
  const above = (offK: readonly [number, number, number]) =>
    ofTable(
      [40, 80, 120].map((at, index) => [simple[at]!.volumeMl, simple[at]!.headC + offK[index]!]),
    )?.aboveRayleighK;

  test('is a simple still of the same charge up to the last volume, and how far the head lay from it', () => {
    expect(ofTable([8, 16, upToMl].map((volumeMl) => [volumeMl, 90]))?.rayleigh).toEqual(simple);
    expect(above([0.4, 0.5, 1.2])).toEqual({
      mean: expect.closeTo(0.7, 9),
      greatest: expect.closeTo(1.2, 9),
    });
    expect(above([0.4, -1.3, 0.6])).toEqual({
      mean: expect.closeTo(-0.1, 9),
      greatest: expect.closeTo(-1.3, 9),
    });
  });

  test('is held against a reading at its own volume, not at the next step of the course', () => {
    const between = (from: number, to: number) => (from + to) / 2;
    const midway = [40, 80, 119].map((at): readonly [number, number] => {
      const [before, after] = [simple[at]!, simple[at + 1]!];
      return [between(before.volumeMl, after.volumeMl), between(before.headC, after.headC)];
    });
    expect(ofTable([...midway, [upToMl, simple.at(-1)!.headC]])?.aboveRayleighK).toEqual({
      mean: expect.closeTo(0, 9),
      greatest: expect.closeTo(0, 9),
    });
  });

  test.each([7.7, 15.4, 30.7])(
    'is held against the last reading too, at whatever volume (%d mL)',
    (lastMl) => {
      const last = batchByVolume({
        chargeMl: 100,
        chargeAbv: 20,
        pressureKPa: 101.325,
        upToMl: lastMl,
        column: null,
      }).at(-1)!;
      const offK = expect.closeTo(100 - last.headC, 9);
      // Of the others none is warm enough for vapour.
      const found = ofTable([
        [lastMl / 3, 20],
        [lastMl / 2, 20],
        [lastMl, 100],
      ]);
      expect([last.volumeMl, found?.aboveRayleighK]).toEqual([
        lastMl,
        { mean: offK, greatest: offK },
      ]);
    },
  );

  test('leaves out what no vapour has, and says nothing where that is all', () => {
    expect(ofTable([8, 16, 24].map((volumeMl) => [volumeMl, 20]))).toMatchObject({
      aboveRayleighK: null,
      rayleigh: simple,
    });
  });

  test('is a column besides, where its plates and a reflux are known', () => {
    const rig = (plates: number | null) => ({ rig: { ...defaultRunSettings.rig, plates } });
    const rectified = (plates: number | null, refluxRatio: number | null) =>
      ofTable(
        [8, 16, 24].map((volumeMl) => [volumeMl, 90]),
        rig(plates),
        refluxRatio,
      )?.rectified;
    expect(rectified(2, 3)).toEqual(
      batchByVolume({
        chargeMl: 100,
        chargeAbv: 20,
        pressureKPa: 101.325,
        upToMl,
        column: { plates: 2, refluxRatio: 3 },
      }),
    );
    expect([rectified(null, 3), rectified(0, 3), rectified(2, null)]).toEqual([null, null, null]);
  });

  test.each([
    ['no more comes over than was charged', { charge: { ...charge, volumeMl: 24.1 } }, true],
    ['all of the charge came over', { charge: { ...charge, volumeMl: 24 } }, false],
    ['the charge is as weak as can be', { charge: { ...charge, strengthAbv: 0.1 } }, true],
    ['the charge is weaker', { charge: { ...charge, strengthAbv: 0.09 } }, false],
    ['the charge is as strong as can be', { charge: { ...charge, strengthAbv: 90 } }, true],
    ['the charge is stronger', { charge: { ...charge, strengthAbv: 90.1 } }, false],
    ['the air is as thin as can be', { pressure: { ...pressure, pressureKPa: 50 } }, true],
    ['the air is thinner', { pressure: { ...pressure, pressureKPa: 49.9 } }, false],
    ['the air is as dense as can be', { pressure: { ...pressure, pressureKPa: 110 } }, true],
    ['the air is denser', { pressure: { ...pressure, pressureKPa: 110.1 } }, false],
  ])('is there only where theory can tell: %s', (_, changes, isKnown) => {
    const found = ofTable(
      [8, 16, 24].map((volumeMl) => [volumeMl, 90]),
      changes,
    );
    expect([found !== null, found?.rayleigh !== null]).toEqual([true, isKnown]);
  });

  test('is none of a table in which nothing came over', () => {
    expect(ofTable([0, 0, 0].map((volumeMl) => [volumeMl, 90]))?.rayleigh).toBeNull();
  });
});
