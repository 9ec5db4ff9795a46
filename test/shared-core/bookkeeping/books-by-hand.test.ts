import { describe, expect, test } from 'vitest';
import { type MarkBody, OutOfRangeError } from '#shared-core';
import { fermentYield } from '../../../shared-core/bookkeeping/ferment-yield.ts';
import { liquidsMeasured } from '../../../shared-core/bookkeeping/liquids-measured.ts';
import { simpleDistillation } from '../../../shared-core/bookkeeping/simple-distillation.ts';
import { measuredStrength } from '../../../shared-core/bookkeeping/strength-measurement.ts';
import { pearOrigin } from '../../support/pear-origin.ts';
import { type BookedRun, booksOf, chargedSettings, marks } from './support/books-of.ts';

const exactly = (value: number) => ({ value, standardUncertainty: 0 });
const about = (value: number, standardUncertainty: number) => ({ value, standardUncertainty });
const cut: readonly MarkBody[] = [
  { type: 'liquid-volume', liquid: 'cut-1', volumeMl: 28, temperatureC: 20 },
  { type: 'liquid-strength', liquid: 'cut-1', alcoholByVolume: 90, temperatureC: 20 },
];
const noHoldUp =
  'Liquid left in the column and the condenser was not measured; it is missing from the balance.';
const doubts = expect.stringMatching(/^Readings without a stated uncertainty \(k = 1\): volumes /);
const oneFloat =
  'Alcoholometer: all readings were taken with one and the same instrument, whose own error is in each of them.';

describe('what the books take for granted is said in whole sentences', () => {
  test('nothing where nothing was booked, and what was measured where something was', () => {
    expect(booksOf({}).assumptions).toEqual([]);
    expect(booksOf({ inputs: marks(...cut) }).assumptions).toEqual([doubts, oneFloat, noHoldUp]);
  });

  test('a cut without a strength, or without an amount, is left out', () => {
    for (const [half] of [[cut.slice(0, 1)], [cut.slice(1)]] as const) {
      const { balance, cuts, assumptions } = booksOf({ inputs: marks(...half) });
      expect([balance, cuts.map(({ booked }) => booked)]).toEqual([null, [null]]);
      expect(assumptions).toEqual([
        'A cut without an amount or a strength is left out of the balance.',
      ]);
    }
  });

  test.each([
    ['Residue', 'residue', 'volume or mass', 'strength or density'],
    ['Hold-up', 'hold-up', 'volume or mass', 'strength or density'],
  ] as const)('%s of which only half is known is left out', (name, liquid, amount, strength) => {
    const weighed: MarkBody = { type: 'liquid-mass', liquid, massG: 20 };
    const tasted: MarkBody = {
      type: 'liquid-strength',
      liquid,
      alcoholByVolume: 2,
      temperatureC: 20,
    };
    expect([weighed, tasted].map((mark) => booksOf({ inputs: marks(mark) }).assumptions)).toEqual([
      [`${name}: its ${strength} was not measured, so it is not in the balance.`],
      [`${name}: its ${amount} was not measured, so it is not in the balance.`],
    ]);
    const whole = booksOf({ inputs: marks(weighed, tasted) });
    expect([whole.residue?.name, whole.holdUp?.name]).toEqual(
      liquid === 'residue' ? ['Residue', undefined] : [undefined, 'Hold-up'],
    );
  });
});

describe('the strength of a cut that nobody measured', () => {
  const estimate = (timeS: number, abv: number | null) => ({
    timeS,
    headVapourAbv: abv === null ? null : { value: abv, low: abv - 2, high: abv + 2 },
  });
  const estimates = [
    estimate(9, 10),
    estimate(10, 90),
    estimate(20, null),
    estimate(50, 94),
    estimate(51, 10),
  ] as unknown as BookedRun['verdicts']['estimates'];
  const inputs = [
    { kind: 'mark', timeS: 10, markId: 1, mark: { type: 'heat-on' } },
    { kind: 'mark', timeS: 50, markId: 2, mark: { type: 'receiver-changed', volumeMl: 20 } },
  ] as const;

  test('is the mean of the vapour while it was collected, and its doubt does not average out', () => {
    const [first] = booksOf({ inputs, verdicts: { estimates, events: [] } }).cuts;
    expect([first?.strengthFrom, first?.booked?.strengthAbv]).toEqual([
      'head-temperature',
      // Straight from 90 to 94 % vol, at an even heat: 92 and what a flow that leans by 0.3 moves it by, 1.96 × 0.3 × 4/6.
      {
        value: expect.closeTo(92, 2),
        low: expect.closeTo(92 - Math.hypot(2, 0.392), 2),
        high: expect.closeTo(92 + Math.hypot(2, 0.392), 2),
      },
    ]);
    expect(booksOf({ inputs, verdicts: { estimates, events: [] } }).assumptions[0]).toMatch(
      /^Where no strength was measured it is taken from the head temperature .* an estimate, not a measurement\.$/,
    );
  });

  test('is unknown where the head said nothing, and measured where somebody measured', () => {
    const read = { type: 'strength-read', alcoholByVolume: 85, sampleTemperatureC: 20 } as const;
    const later = [...inputs, { kind: 'mark', timeS: 55, markId: 3, mark: read } as const];
    expect([
      booksOf({ inputs }).cuts.map(({ strengthFrom }) => strengthFrom),
      booksOf({ inputs: later, verdicts: { estimates, events: [] } }).cuts.map(
        (one) => one.strengthFrom,
      ),
    ]).toEqual([['unknown'], ['measured']]);
  });

  test('is nobody’s where nobody measured how much there was, and that of a measured one stays', () => {
    const taken = { type: 'receiver-changed', volumeMl: null } as const;
    const read = { type: 'liquid-strength', liquid: 'cut-1', alcoholByVolume: 85 } as const;
    const unmeasured = [
      { kind: 'mark', timeS: 10, markId: 1, mark: { type: 'heat-on' } },
      { kind: 'mark', timeS: 50, markId: 2, mark: taken },
    ] as const;
    const later = {
      kind: 'mark',
      timeS: 55,
      markId: 3,
      mark: { ...read, temperatureC: 20 },
    } as const;
    const cutOf = (run: Partial<BookedRun>) => {
      const [one] = booksOf({ ...run, verdicts: { estimates, events: [] } }).cuts;
      return [one?.strengthFrom, one?.strengthAbv?.value ?? null, one?.booked];
    };
    expect([cutOf({ inputs: unmeasured }), cutOf({ inputs: [...unmeasured, later] })]).toEqual([
      ['unknown', null, null],
      ['measured', expect.closeTo(85, 6), null],
    ]);
    expect(
      booksOf({ inputs: unmeasured, verdicts: { estimates, events: [] } }).assumptions,
    ).not.toContainEqual(expect.stringMatching(/^Where no strength was measured/));
  });
});

test('a last receiver that distillate ran into is a cut that nobody measured, and one put under as the heat went off is none', () => {
  const estimates = [60, 120, 400].map((timeS) => ({
    timeS,
    headVapourAbv: { value: 90, low: 88, high: 92 },
  }));
  const unmeasured = (heatOffS: number | null, known: readonly (typeof estimates)[number][]) => {
    const acts: readonly (readonly [number, MarkBody])[] = [
      [1, { type: 'heat-on' }],
      [100, { type: 'receiver-changed', volumeMl: 20 }],
      ...(heatOffS === null ? [] : [[heatOffS, { type: 'heat-off' }] as const]),
    ];
    const inputs = acts
      .map(([timeS, mark], index) => ({ kind: 'mark' as const, timeS, markId: index + 1, mark }))
      .toSorted((a, b) => a.timeS - b.timeS);
    const { cuts, unmeasuredCuts } = booksOf({
      inputs,
      verdicts: { estimates: [...known], events: [] },
    });
    return [cuts.length, unmeasuredCuts];
  };
  expect([
    unmeasured(380, estimates),
    unmeasured(null, estimates),
    unmeasured(150, estimates),
    unmeasured(90, estimates),
    unmeasured(380, estimates.slice(0, 2)),
  ]).toEqual([
    [2, [2]],
    [2, [2]],
    [1, []],
    [1, []],
    [1, []],
  ]);
});

test('a slip of the pen is told with what was read and what could be, and is in no balance', () => {
  const residue = (density: number): readonly MarkBody[] => [
    { type: 'liquid-mass', liquid: 'residue', massG: 20 },
    { type: 'liquid-density', liquid: 'residue', densityKgPerM3: density, temperatureC: 20 },
  ];
  const books = (density: number) => booksOf({ inputs: marks(...cut, ...residue(density)) });
  expect([books(990).residue?.name, books(1045).residue]).toEqual(['Residue', null]);
  // Pure ethanol and pure water at 20 °C weigh 789.2 and 998.2 kg/m³ (OIML R 22); 1.96 × √(1² + (0.5 × 0.206)²) = 1.97 kg/m³ farther is within the doubts.
  expect(books(1045).assumptions).toContain(
    'Residue: no mixture of ethanol and water has these readings (1045 kg/m³, where 787.3 to 1000 kg/m³ is possible), so it is not in the balance.',
  );
});

test('what was left on the glass is named as the still has it', () => {
  const books = booksOf({
    settings: { ...chargedSettings, rig: { ...chargedSettings.rig, plates: 0 } },
    inputs: marks(...cut),
  });
  expect(books.assumptions).toContain(
    'Liquid left on the glass and in the condenser was not measured; it is missing from the balance.',
  );
  expect(books.assumptions).not.toContain(noHoldUp);
});

test('cuts that only entries know stand in the order of their numbers', () => {
  const { cuts } = booksOf({ entries: { cuts: [{ number: 10 }, { number: 2 }, { number: 3 }] } });
  expect(cuts.map(({ number }) => number)).toEqual([2, 3, 10]);
});

test('entries made after the run add to the cuts that the marks know, in the order of their numbers', () => {
  const stated = { by: 'stated', strengthAbv: exactly(80) } as const;
  const grams = { by: 'mass', massG: exactly(5) } as const;
  const { cuts, refluxRatio, measured } = booksOf({
    inputs: [
      { kind: 'mark', timeS: 50, markId: 1, mark: { type: 'receiver-changed', volumeMl: 20 } },
    ],
    entries: {
      cuts: [
        { number: 3, amount: grams, strength: stated },
        { number: 1, strength: stated },
      ],
      refluxRatio: 4,
    },
  });
  expect(
    cuts.map(({ number, fromS, toS, amount, strength }) => [
      number,
      fromS,
      toS,
      amount?.by,
      strength,
    ]),
  ).toEqual([
    [1, 0, 50, 'volume', stated],
    [3, 50, 600, 'mass', stated],
  ]);
  expect([refluxRatio, booksOf({}).refluxRatio]).toEqual([4, null]);
  expect(measured.map(({ liquid }) => liquid)).toEqual([
    'charge',
    'cut 1',
    'cut 3',
    'residue',
    'hold-up',
  ]);
});

test('the sugar is what was said last of it: an entry, a mark, or the ferment it came from', () => {
  const withFerment = { ...chargedSettings, ferment: pearOrigin };
  const known: MarkBody = { type: 'sugar-known', sugarG: 60, standardUncertaintyG: 2 };
  const entries = { cuts: [], sugarG: about(70, 1) };
  expect([
    booksOf({}).sugarG,
    booksOf({ settings: withFerment }).sugarG,
    booksOf({ settings: withFerment, inputs: marks(known) }).sugarG,
    booksOf({ settings: withFerment, inputs: marks(known), entries }).sugarG,
  ]).toEqual([
    null,
    // 0.35 L × 150 g/L = 52.5 g; √((0.35 × 3)² + (0.15 × √(0.5² + (0.5 % of 350)²))²) g.
    {
      value: 52.5,
      standardUncertainty: expect.closeTo(Math.hypot(0.35 * 3, 0.15 * Math.hypot(0.5, 1.75)), 9),
    },
    about(60, 2),
    about(70, 1),
  ]);
  expect(booksOf({ settings: withFerment }).assumptions).toEqual([
    'The sugar is that of the ferment “Pear”, 150 g/L as it began, for the volume that was charged.',
  ]);
  expect(booksOf({ entries }).ferment).toBeNull();
});

test('what was weighed, filled or floated at the bench becomes a measurement with the doubts of the bench', () => {
  const weighings = {
    emptyG: 30,
    withWaterG: 79.85,
    withSampleG: 73,
    waterTemperatureC: 20,
    sampleTemperatureC: 21,
  };
  const found = liquidsMeasured(
    marks(
      { type: 'liquid-pycnometer', liquid: 'hold-up', ...weighings },
      { type: 'sample-weighed', liquid: 'cut-12', massG: 41.2, volumeMl: 50, temperatureC: null },
      { type: 'liquid-density', liquid: 'residue', densityKgPerM3: 997, temperatureC: 22.5 },
      { type: 'heat-off' },
    ),
  );
  expect(found).toEqual({
    residue: {
      amount: null,
      strength: {
        by: 'hydrometer',
        indicatedDensityKgPerM3: about(997, 0.6),
        temperatureC: about(22.5, 0.5),
        instrument: { name: 'Hydrometer', standardUncertainty: 0.8 },
      },
    },
    holdUp: {
      amount: null,
      strength: {
        by: 'pycnometer',
        weighings: { ...weighings, weighingUncertaintyG: 0.02 },
        temperatureUncertaintyK: 0.5,
      },
    },
    cuts: new Map([
      [
        12,
        {
          amount: null,
          strength: {
            by: 'balance',
            massG: about(41.2, 0.05),
            volumeMl: about(50, 0.1),
            temperatureC: about(20, 2),
          },
        },
      ],
    ]),
    sugarG: null,
  });
});

test('yields and their doubts are those of a calculation by hand, with what each came from', () => {
  const found = fermentYield({
    sugarG: about(100, 1),
    fermentEthanolG: about(48.4, 0.5),
    productEthanolG: about(40, 0.4),
  });
  const told = ({ value, standardUncertainty, budget }: typeof found.overallPercent) => [
    value.toFixed(2),
    standardUncertainty.toFixed(3),
    budget.lines.map(({ name, reason }) => `${name} ${reason}`).toSorted(),
  ];
  const sugar = 'Sugar as booked [g]';
  const ferment = 'Ethanol in the ferment as booked [g]';
  const product = 'Ethanol in the product as booked [g]';
  // 2 × 46.068/180.156 = 0.51143 g/g. Relative doubts: √(1.0331² + 1²) %, √(1² + 1.0331²) %, √(1² + 1²) %.
  expect(found.theoreticalG).toEqual({
    value: expect.closeTo(51.143, 2),
    standardUncertainty: expect.closeTo(0.51143, 4),
  });
  expect([
    told(found.fermentationPercent),
    told(found.distillationPercent),
    told(found.overallPercent),
  ]).toEqual([
    ['94.64', '1.361', [ferment, sugar]],
    ['82.64', '1.188', [ferment, product]],
    ['78.21', '1.106', [product, sugar]],
  ]);
  const nothing = { sugarG: exactly(0), fermentEthanolG: exactly(1), productEthanolG: exactly(1) };
  expect(() => fermentYield(nothing)).toThrow(/sugar.*g/);
  expect(() =>
    fermentYield({ ...nothing, sugarG: exactly(1), fermentEthanolG: exactly(0) }),
  ).toThrow(/ethanol in the ferment.*g/);
  expect(() =>
    fermentYield({ ...nothing, sugarG: exactly(1), productEthanolG: exactly(-1) }),
  ).toThrow(/ethanol in the product.*g/);
});

test('a simple distillation loses no ethanol: what is not in the pot is in the receiver', () => {
  for (const distillateMol of [1, 30, 90]) {
    const found = simpleDistillation({
      chargeMol: 100,
      potMoleFraction: 0.1,
      distillateMol,
      pressureKPa: 98.6,
    });
    const overMol = distillateMol * found.distillateMoleFraction;
    expect(overMol + (100 - distillateMol) * found.residueMoleFraction).toBeCloseTo(10, 6);
    expect(found.recoveryPercent).toBeCloseTo(10 * overMol, 6);
    expect(found.distillateMoleFraction).toBeGreaterThan(0.1);
    expect(found.residueMoleFraction).toBeLessThan(0.1);
  }
  const batch = { chargeMol: 100, potMoleFraction: 0.1, distillateMol: 30, pressureKPa: 98.6 };
  for (const wrong of [{ potMoleFraction: 0.9 }, { distillateMol: 100 }, { distillateMol: 0 }])
    expect(() => simpleDistillation({ ...batch, ...wrong })).toThrow(OutOfRangeError);
});

test.each([
  [50, 0.5, [49.02, 50.98]],
  [0.2, 0.5, [0, 1.18]],
  [99.8, 0.5, [98.82, 100]],
])(
  'a stated strength of %d % vol has its 95 % interval, and never beyond the scale',
  (value, doubt, [low, high]) => {
    expect(
      measuredStrength({ by: 'stated', strengthAbv: about(value, doubt) }).alcoholByVolume,
    ).toEqual({ value, low: expect.closeTo(low ?? 0, 2), high: expect.closeTo(high ?? 0, 2) });
  },
);

test.each([-0.1, 100.1, Number.NaN])('a stated strength of %d % vol is an error', (value) => {
  expect(() => measuredStrength({ by: 'stated', strengthAbv: exactly(value) })).toThrow(
    /strength.*% vol/,
  );
});
