import { describe, expect, test } from 'vitest';
import { equilibriumCurve, type Quantity } from '#shared-core';
import { apparentPlates } from '../../../shared-core/bookkeeping/apparent-plates.ts';
import { bookLiquid } from '../../../shared-core/bookkeeping/book-liquid.ts';
import { instrumentShare } from '../../../shared-core/bookkeeping/instrument-share.ts';
import { propagateUncertainty } from '../../../shared-core/bookkeeping/propagate-uncertainty.ts';
import type { StrengthMeasurement } from '../../../shared-core/bookkeeping/strength-measurement.ts';
import { measuredStrength } from '../../../shared-core/bookkeeping/strength-measurement.ts';
import { sumOfLiquids } from '../../../shared-core/bookkeeping/sum-liquids.ts';

const about = (value: number, standardUncertainty: number): Quantity => ({
  value,
  standardUncertainty,
});
const exactly = (value: number) => about(value, 0);
const sharp = (value: number) => ({ value, low: value, high: value });

describe('plates of a column, counted twice', () => {
  const countedAt = (distillate: number, pot = 0.05, refluxRatio: number | null = null) =>
    apparentPlates({
      distillateMoleFraction: sharp(distillate),
      potMoleFraction: sharp(pot),
      pressureKPa: 101.325,
      refluxRatio,
    });
  const over = (pot: number, stages: number) => {
    const equilibrium = equilibriumCurve(101.325);
    let x = pot;
    for (let stage = 0; stage < stages; stage += 1) x = equilibrium(x);
    return x;
  };

  test.each([
    [1, 'more'],
    [3, 'cancel'],
    [5, 'fewer'],
  ])(
    'of %d stages have the volatilities of the curve at both ends, their geometric mean, and words for it',
    (stages, side) => {
      const top = over(0.05, stages);
      const found = countedAt(top);
      const alpha = (x: number) => {
        const y = over(x, 1);
        return y / (1 - y) / (x / (1 - x));
      };
      const mean = Math.sqrt(alpha(0.05) * alpha(top));
      // Fenske: N = ln[(x_D/(1 − x_D))((1 − x_W)/x_W)]/ln α, the pot counted.
      const separation = Math.log((top / (1 - top)) * (0.95 / 0.05));
      expect(found).toMatchObject({
        stepped: { value: expect.closeTo(stages, 3) },
        steppedAtReflux: null,
        fenske: expect.closeTo(separation / Math.log(mean), 9),
        volatilityAtPot: expect.closeTo(alpha(0.05), 9),
        volatilityAtTop: expect.closeTo(alpha(top), 9),
        meanVolatility: expect.closeTo(mean, 9),
        diagram: { stages: found.stepped },
      });
      expect(found.whyTheyDiffer).toBe(
        "Steps at total reflux and Fenske's formula count the same stages, the pot among them. " +
          `Relative volatility falls from ${alpha(0.05).toPrecision(3)} over the pot to ${alpha(top).toPrecision(3)} over the distillate. ` +
          (side === 'cancel'
            ? 'Here the errors of taking one value happen to cancel.'
            : `Fenske's formula takes ${mean.toPrecision(3)} everywhere and so gives ${side} stages than the steps, ` +
              'each of which uses its own; trust the steps.'),
      );
    },
  );

  test('are none at the azeotrope, and the words say why', () => {
    const found = countedAt(0.92, 0.05, 3);
    expect([found.stepped.value, found.fenske, found.steppedAtReflux?.value]).toEqual([
      null,
      null,
      null,
    ]);
    expect(found.whyTheyDiffer).toMatch(
      /^Relative volatility falls .* At the azeotrope it is 1: steps never arrive there, and Fenske's formula means nothing\.$/,
    );
  });

  test('take less reflux to be more plates', () => {
    const at = (refluxRatio: number) => countedAt(over(0.05, 3), 0.05, refluxRatio);
    const [some = 0, more = 0] = [4, 40].map((ratio) => at(ratio).steppedAtReflux?.value ?? 0);
    expect(some).toBeGreaterThan(more);
    expect(more).toBeGreaterThan(3);
    expect(more).toBeLessThan(3.6);
  });

  test.each([
    [0.5, 0, /ethanol in the pot.*mol\/mol/],
    [0.05, 0.05, /ethanol in the distillate.*mol\/mol/],
    [1, 0.05, /ethanol in the distillate.*mol\/mol/],
  ])('from a distillate of %d over a pot of %d are an error', (distillate, pot, words) => {
    expect(() => countedAt(distillate, pot)).toThrow(words);
  });
});

describe('a booked liquid', () => {
  const stated = (abv: number, doubt = 0) =>
    ({ by: 'stated', strengthAbv: about(abv, doubt) }) as const;
  const reasons = (strength: StrengthMeasurement, by: 'mass' | 'volume') =>
    bookLiquid({
      name: 'Cut',
      strength,
      amount:
        by === 'mass'
          ? { by, massG: about(50, 0.1) }
          : { by, volumeMl: about(50, 0.5), temperatureC: about(20, 0.5) },
    })
      .ethanolG.budget.lines.map(({ name, reason }) => `${name}: ${reason}`)
      .toSorted();

  test('says of each part of its doubt where it comes from', () => {
    expect([reasons(stated(40, 0.3), 'mass'), reasons(stated(40, 0.3), 'volume')]).toEqual([
      ['Mass: the balance', 'Strength: the strength as stated'],
      [
        'Strength: the strength as stated',
        'Temperature: of the liquid measured',
        'Volume: the measuring cylinder',
      ],
    ]);
  });

  test('is as large by volume as by the mass of that volume', () => {
    // OIML R 22 table: 40 % vol is 948.0452 kg/m³ at 20 °C.
    const booked = bookLiquid({
      name: 'Cut',
      amount: { by: 'mass', massG: exactly(94.80452) },
      strength: stated(40),
    });
    expect([booked.volumeMl.value, booked.ethanolMl.value, booked.instrument]).toEqual([
      expect.closeTo(100, 4),
      expect.closeTo(40, 4),
      null,
    ]);
  });

  test.each([
    [{ by: 'mass', massG: exactly(-1) }, /amount of Cut.* g/],
    [{ by: 'mass', massG: exactly(1.1e6) }, /amount of Cut.* g/],
    [{ by: 'volume', volumeMl: exactly(-1), temperatureC: exactly(20) }, /amount of Cut.* mL/],
  ] as const)('of %j is an error', (amount, words) => {
    expect(() => bookLiquid({ name: 'Cut', amount, strength: stated(40) })).toThrow(words);
  });
});

describe('the share of an instrument in a strength', () => {
  const read = (abv: number, itself?: number): StrengthMeasurement => ({
    by: 'alcoholometer',
    indicatedAbv: exactly(abv),
    temperatureC: exactly(20),
    ...(itself === undefined ? {} : { instrument: { name: 'Float', standardUncertainty: itself } }),
  });

  test('is half of what the reading moves between its ends, and one side alone at the end of the scale', () => {
    // OIML R 22 table, mass fractions: 39 % vol 0.3241, 41 % vol 0.3419; 1 % vol 0.0079.
    expect([instrumentShare(read(40, 1)), instrumentShare(read(0, 1))]).toEqual([
      { name: 'Float', massFraction: expect.closeTo((0.3419 - 0.3241) / 2, 4) },
      { name: 'Float', massFraction: expect.closeTo(0.0079, 4) },
    ]);
    // General formula of OIML R 22: 0.5 % vol is 0.0040, 1.5 % vol 0.0119; half a per cent below there is no scale.
    expect(instrumentShare(read(0.5, 1))?.massFraction).toBeCloseTo(0.0119 - 0.004, 4);
    const top = instrumentShare(read(100, 1))?.massFraction ?? 0;
    // 99 % vol is 98.38 % mass.
    expect(top).toBeCloseTo(1 - 0.9838, 3);
  });

  test('of a hydrometer has the other sign: denser is weaker', () => {
    const strength: StrengthMeasurement = {
      by: 'hydrometer',
      indicatedDensityKgPerM3: exactly(948.0452),
      temperatureC: exactly(20),
      instrument: { name: 'Spindle', standardUncertainty: 1 },
    };
    const share = instrumentShare(strength)?.massFraction ?? 0;
    // Between 38 and 42 % vol (950.79 … 944.33 kg/m³ would be 4 % vol): some 0.5 % mass for 1 kg/m³.
    expect(share).toBeLessThan(-0.004);
    expect(share).toBeGreaterThan(-0.006);
  });

  test('is none without an instrument, with a perfect one, or where none was read', () => {
    expect(
      [read(40), read(40, 0), { by: 'stated', strengthAbv: exactly(40) } as const].map(
        instrumentShare,
      ),
    ).toEqual([null, null, null]);
  });

  test('adds up over liquids with its sign, beside what is their own', () => {
    const cut = (name: string) =>
      bookLiquid({
        name,
        amount: { by: 'mass', massG: about(20, 0.3) },
        strength: read(40, 1),
      });
    const one = cut('Cut 1').instrument?.ethanolG ?? 0;
    expect(one).toBeCloseTo((20 * (0.3419 - 0.3241)) / 2, 3);
    const { value, standardUncertainty } = sumOfLiquids([cut('Cut 1'), cut('Cut 2')], 'ethanolG');
    // Own: 0.3 g × 0.333 each; shared: twice the one.
    expect([value, standardUncertainty]).toEqual([
      expect.closeTo(2 * 20 * 0.333, 2),
      expect.closeTo(Math.hypot(0.3 * 0.333 * Math.SQRT2, 2 * one), 3),
    ]);
  });
});

test('a weighed flask gives the density with both buoyancies, and doubts of mass and volume in squares', () => {
  const weighed = measuredStrength({
    by: 'balance',
    massG: about(45.4, 0.4),
    volumeMl: about(50, 0.3),
    temperatureC: exactly(20),
  }).alcoholByVolume;
  // 0.908 × (1 − 0.0012/8) + 0.0012 = 0.909064 g/mL: by the table of OIML R 22 60 % vol is 909.1146 kg/m³, and 1 % vol is 2.3.
  expect(weighed.value).toBeCloseTo(60.02, 1);
  // √((0.4/45.4)² + (0.3/50)²) = 1.066 % of 908 kg/m³ = 9.68 kg/m³; × 1.96/2.3 is some 8 % vol.
  expect((weighed.high - weighed.low) / 2).toBeGreaterThan(7);
  expect((weighed.high - weighed.low) / 2).toBeLessThan(9.5);
  const wrong = (massG: number, volumeMl: number) => () =>
    measuredStrength({
      by: 'balance',
      massG: exactly(massG),
      volumeMl: exactly(volumeMl),
      temperatureC: exactly(20),
    });
  expect(wrong(0, 50)).toThrow(/mass.* g/);
  expect(wrong(45, 0)).toThrow(/volume.* mL/);
});

describe('the derivative of a calculation', () => {
  const doubt = (of: (x: number) => number) =>
    propagateUncertainty([{ name: 'x', reason: '', ...about(2, 0.5) }], ([x = 0]) => of(x))
      .standardUncertainty;
  const endsBelow = (x: number) => {
    if (x < 2) throw new RangeError('below');
    return 3 * x;
  };
  const endsAbove = (x: number) => {
    if (x > 2) throw new RangeError('above');
    return 3 * x;
  };
  const isAPoint = (x: number) => {
    if (x !== 2) throw new RangeError('beside');
    return 3 * x;
  };

  test('is taken on both sides, or on the one there is, or is nothing', () => {
    expect([(x: number) => 3 * x, endsBelow, endsAbove, isAPoint].map(doubt)).toEqual([
      expect.closeTo(1.5, 9),
      expect.closeTo(1.5, 9),
      expect.closeTo(1.5, 9),
      0,
    ]);
  });

  test('hides no other error', () => {
    const broken = (x: number) => {
      if (x !== 2) throw new TypeError('a bug');
      return x;
    };
    expect(() => doubt(broken)).toThrow('a bug');
    expect(() => doubt(() => Number.NaN)).toThrow(/result/);
  });
});
