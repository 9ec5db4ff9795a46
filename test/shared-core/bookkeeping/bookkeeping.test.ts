import { describe, expect, test } from 'vitest';
import {
  createRandom,
  cutsOfRun,
  equilibriumCurve,
  type Mark,
  type MarkBody,
  OutOfRangeError,
  type Quantity,
} from '#shared-core';
import { apparentPlates } from '../../../shared-core/bookkeeping/apparent-plates.ts';
import { balanceBatch } from '../../../shared-core/bookkeeping/balance-batch.ts';
import {
  bookLiquid,
  type LiquidMeasurement,
} from '../../../shared-core/bookkeeping/book-liquid.ts';
import { fermentYield } from '../../../shared-core/bookkeeping/ferment-yield.ts';
import {
  atStandardPressureC,
  longestPlateau,
  plateauStatistics,
} from '../../../shared-core/bookkeeping/plateau-statistics.ts';
import { poolLiquids } from '../../../shared-core/bookkeeping/pool-liquids.ts';
import { propagateUncertainty } from '../../../shared-core/bookkeeping/propagate-uncertainty.ts';
import { simpleDistillation } from '../../../shared-core/bookkeeping/simple-distillation.ts';
import { measuredStrength } from '../../../shared-core/bookkeeping/strength-measurement.ts';

const exactly = (value: number): Quantity => ({ value, standardUncertainty: 0 });
const about = (value: number, standardUncertainty: number): Quantity => ({
  value,
  standardUncertainty,
});

function liquid(volumeMl: Quantity, strengthAbv: Quantity, name = 'Liquid'): LiquidMeasurement {
  return {
    name,
    amount: { by: 'volume', volumeMl, temperatureC: exactly(20) },
    strength: { by: 'stated', strengthAbv },
  };
}

describe('bookLiquid', () => {
  test('books a liquid as a hand calculation with the printed table of OIML R 22 does', () => {
    // Table: 40 % vol is 33.2996 % mass and 948.0452 kg/m³ at 20 °C.
    // 250 mL × 0.9480452 g/mL = 237.0113 g; × 0.332996 = 78.9238 g; / 0.789239 g/mL = 100.000 mL.
    const booked = bookLiquid(liquid(exactly(250), exactly(40)));
    expect({
      massG: Number(booked.massG.value.toFixed(4)),
      ethanolG: Number(booked.ethanolG.value.toFixed(3)),
      ethanolMl: Number(booked.ethanolMl.value.toFixed(3)),
      volumeMl: Number(booked.volumeMl.value.toFixed(6)),
    }).toEqual({ massG: 237.0113, ethanolG: 78.924, ethanolMl: 100, volumeMl: 250 });
  });

  test('finds the same ethanol from a volume read warm as from the mass', () => {
    // Water–ethanol 50 % mass at 30 °C: the volume grows, the mass does not.
    const byMass = bookLiquid({
      name: 'by mass',
      amount: { by: 'mass', massG: exactly(100) },
      strength: { by: 'stated', strengthAbv: exactly(57.9) },
    });
    const warmMl = (100 / byMass.massG.value) * 100;
    expect(warmMl).toBe(100);
    const density30 = 0.9055;
    const byVolume = bookLiquid({
      name: 'by volume',
      amount: { by: 'volume', volumeMl: exactly(100 / density30), temperatureC: exactly(30) },
      strength: { by: 'stated', strengthAbv: exactly(57.9) },
    });
    expect(byVolume.ethanolG.value / byMass.ethanolG.value).toBeCloseTo(1, 3);
  });

  test('carries amount and strength into the uncertainty as the law of propagation asks', () => {
    // m_E/m_E ≈ √((0.5/50)² + (0.3/40)²) for a strength well below saturation: 1.25 %, and some more
    // because the density falls with strength (d ln(wρ)/d ln q is 1 by definition of % vol).
    const { ethanolG } = bookLiquid(liquid(about(50, 0.5), about(40, 0.3)));
    expect(ethanolG.standardUncertainty / ethanolG.value).toBeCloseTo(0.0125, 4);
  });
});

test('liquids poured together keep mass and ethanol, and contract as the densities say', () => {
  const [spirit, water] = [liquid(exactly(50), exactly(96)), liquid(exactly(50), exactly(0))];
  const pooled = poolLiquids([bookLiquid(spirit), bookLiquid(water)]);
  // By hand from R 22: 50 × 0.807424 + 50 × 0.998201 = 90.2813 g, of which 48 mL ethanol = 37.8835 g: 41.962 % mass,
  // ρ = 0.93111 g/mL, 96.96 mL, 49.50 % vol.
  expect({
    massG: Number(pooled.massG.value.toFixed(2)),
    ethanolG: Number(pooled.ethanolG.value.toFixed(2)),
    volumeMl: Number(pooled.volumeMl.value.toFixed(1)),
    strengthAbv: Number(pooled.strengthAbv.value.toFixed(1)),
  }).toEqual({ massG: 90.28, ethanolG: 37.88, volumeMl: 97, strengthAbv: 49.5 });
});

test('four instruments agree on one liquid', () => {
  // 60 % vol: 909.1146 kg/m³ at 20 °C (OIML R 22 table).
  const strengths = (
    [
      { by: 'stated', strengthAbv: exactly(60) },
      { by: 'alcoholometer', indicatedAbv: exactly(60), temperatureC: exactly(20) },
      { by: 'hydrometer', indicatedDensityKgPerM3: exactly(909.1146), temperatureC: exactly(20) },
      {
        by: 'pycnometer',
        weighings: {
          emptyG: 30,
          // 50 mL of water and of sample, each less the air they displace.
          withWaterG: 30 + 50 * (0.99820123 - 0.0012),
          withSampleG: 30 + 50 * (0.9091146 - 0.0012),
          waterTemperatureC: 20,
          sampleTemperatureC: 20,
          weighingUncertaintyG: 0,
        },
        temperatureUncertaintyK: 0,
      },
      {
        by: 'balance',
        massG: exactly((50 * (0.9091146 - 0.0012)) / (1 - 0.0012 / 8)),
        volumeMl: exactly(50),
        temperatureC: exactly(20),
      },
    ] as const
  ).map((measurement) => measuredStrength(measurement).alcoholByVolume.value);
  for (const strength of strengths) expect(strength).toBeCloseTo(60, 3);
});

describe('propagateUncertainty', () => {
  test('agrees with a Monte Carlo draw for a product and a quotient', () => {
    const inputs = [
      { name: 'a', reason: '', ...about(20, 0.4) },
      { name: 'b', reason: '', ...about(0.8, 0.01) },
      { name: 'c', reason: '', ...about(250, 2) },
    ];
    const of = ([a = 0, b = 0, c = 1]: readonly number[]) => (100 * a * b) / c;
    const random = createRandom('propagation');
    const drawn = Array.from({ length: 20_000 }, () =>
      of(
        inputs.map(
          ({ value, standardUncertainty }) => value + standardUncertainty * random.normal(),
        ),
      ),
    );
    const mean = drawn.reduce((sum, value) => sum + value, 0) / drawn.length;
    const spread = Math.sqrt(
      drawn.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (drawn.length - 1),
    );
    const propagated = propagateUncertainty(inputs, of);
    expect(propagated.value).toBeCloseTo(6.4, 9);
    expect(propagated.standardUncertainty / spread).toBeCloseTo(1, 1);
  });

  test('takes a one-sided derivative where the function ends', () => {
    const { standardUncertainty } = bookLiquid(liquid(exactly(100), about(0, 0.5))).ethanolMl;
    expect(standardUncertainty).toBeGreaterThan(0.2);
  });
});

describe('balanceBatch', () => {
  const books = {
    charge: bookLiquid(liquid(about(250, 1), about(11, 0.3))),
    cuts: [
      bookLiquid(liquid(about(2, 0.1), about(92, 0.5))),
      bookLiquid(liquid(about(23, 0.2), about(90, 0.5))),
    ],
    residue: bookLiquid(liquid(about(220, 1), about(1.2, 0.2))),
    holdUp: null,
  };

  test('adds up as by hand', () => {
    // Ethanol as volume at 20 °C: in 27.5 mL; cuts 1.84 + 20.7 = 22.54 mL (81.96 %); residue 2.64 mL; sum 25.18 mL (91.56 %).
    const { ethanol, total } = balanceBatch(books);
    expect({
      recovery: Number(ethanol.recoveryPercent.value.toFixed(2)),
      closure: Number(ethanol.closurePercent?.value.toFixed(2)),
      // √(2.50² strength of the charge + 0.37² its volume + 1.60² residue + 0.78² + 0.34² cuts) = 3.1 %.
      uncertainty: Number(ethanol.closurePercent?.standardUncertainty.toFixed(1)),
      closes: ethanol.closes,
      missingMassG: Number(total.missingG?.value.toFixed(1)),
    }).toEqual({
      recovery: 81.96,
      closure: 91.56,
      uncertainty: 3.1,
      closes: false,
      // 245.9 g charged (983.6 kg/m³); cuts 1.6 + 19.1 g; residue 219.2 g.
      missingMassG: 6,
    });
  });

  test('has no closure without a residue, because a difference always closes', () => {
    const { ethanol } = balanceBatch({ ...books, residue: null });
    expect([ethanol.closurePercent, ethanol.missingG, ethanol.closes]).toEqual([null, null, null]);
  });
});

describe('readings with one instrument', () => {
  const float = { name: 'Alcoholometer', standardUncertainty: 1 };
  const cut = (name: string, massG: number, abv: number, instrument = float) =>
    bookLiquid({
      name,
      amount: { by: 'mass', massG: exactly(massG) },
      strength: {
        by: 'alcoholometer',
        indicatedAbv: exactly(abv),
        temperatureC: exactly(20),
        instrument,
      },
    });
  const charge = bookLiquid({
    name: 'Charge',
    amount: { by: 'mass', massG: exactly(250) },
    strength: { by: 'stated', strengthAbv: exactly(40) },
  });

  test('share its error: it adds up in the balance as by hand, instead of averaging out', () => {
    const cuts = [cut('Cut 1', 20, 40), cut('Cut 2', 30, 60)];
    const { recoveryPercent, cutsG } = balanceBatch({
      charge,
      cuts,
      residue: null,
      holdUp: null,
    }).ethanol;
    // By the formula of OIML R 22 39 and 41 % vol are 32.41 and 34.19 % mass: 0.88885 % mass for 1 % vol; 59 and 61 % vol are
    // 51.09 and 53.09: 0.996 % mass. Cut 1: 20 g × 0.0088885 = 0.17777 g; cut 2: 30 g × 0.00996 = 0.29880 g.
    // r = 1 (JCGM 100, 5.2.2): u = 0.17777 + 0.29880 = 0.47657 g. As if independent it would be 0.34768 g.
    // Of 250 g × 0.332996 = 83.249 g charged: 0.57246 %.
    expect(cutsG.standardUncertainty).toBeCloseTo(0.47657, 3);
    expect(recoveryPercent.standardUncertainty).toBeCloseTo(0.57246, 3);
    expect(recoveryPercent.budget.lines.map(({ name, reason }) => `${name}: ${reason}`)).toEqual([
      'Alcoholometer itself: common to Cut 1, Cut 2 [g]',
      'Cut 1: as booked [g]',
      'Cut 2: as booked [g]',
      'Charge: as booked [g]',
    ]);
  });

  test('of two instruments add in squares', () => {
    const other = { name: 'Another alcoholometer', standardUncertainty: 1 };
    const cuts = [cut('Cut 1', 20, 40), cut('Cut 2', 30, 60, other)];
    const { cutsG } = balanceBatch({ charge, cuts, residue: null, holdUp: null }).ethanol;
    expect(cutsG.standardUncertainty).toBeCloseTo(Math.hypot(0.17777, 0.2988), 3);
  });

  test('agree with a Monte Carlo draw in which one error moves both readings', () => {
    const random = createRandom('one alcoholometer');
    const draws = Array.from({ length: 1000 }, () => {
      const off = random.normal();
      return [cut('Cut 1', 20, 40 + off), cut('Cut 2', 30, 60 + off)].reduce(
        (sum, { ethanolG }) => sum + ethanolG.value,
        0,
      );
    });
    const mean = draws.reduce((sum, value) => sum + value, 0) / draws.length;
    const spread = Math.sqrt(
      draws.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (draws.length - 1),
    );
    const pooled = poolLiquids([cut('Cut 1', 20, 40), cut('Cut 2', 30, 60)]);
    expect(pooled.ethanolG.standardUncertainty / spread).toBeCloseTo(1, 1);
  });

  test('at the end of its scale has an uncertainty, not a crash', () => {
    expect(cut('Residue', 200, 0).instrument?.ethanolG).toBeGreaterThan(1);
  });
});

describe('cutsOfRun', () => {
  const run = (bodies: readonly (readonly [number, MarkBody])[]) =>
    bodies.map(([timeS, mark], index): Mark => ({ kind: 'mark', timeS, markId: index + 1, mark }));

  test('gives a strength read during the run to the receiver last taken away, and afterwards to the one in place', () => {
    const cuts = cutsOfRun({
      inputs: run([
        [0, { type: 'heat-on' }],
        [1000, { type: 'receiver-changed', volumeMl: 2 }],
        [1100, { type: 'strength-read', alcoholByVolume: 91, sampleTemperatureC: 22 }],
        [2000, { type: 'heat-off' }],
        [2100, { type: 'volume-read', volumeMl: 20 }],
        [2200, { type: 'strength-read', alcoholByVolume: 88, sampleTemperatureC: null }],
      ]),
      endS: 2500,
    });
    expect(
      cuts.map(({ fromS, toS, amount, strength }) => [
        fromS,
        toS,
        amount?.by === 'volume' ? amount.volumeMl.value : null,
        strength?.by === 'alcoholometer' ? strength.indicatedAbv.value : null,
      ]),
    ).toEqual([
      [0, 1000, 2, 91],
      [1000, 2500, 20, 88],
    ]);
  });

  test('leaves withdrawn marks out, and knows no cuts when nobody measured any', () => {
    const inputs = run([
      [100, { type: 'volume-read', volumeMl: 7 }],
      [110, { type: 'mark-withdrawn', withdrawnMarkId: 1 }],
    ]);
    expect(cutsOfRun({ inputs, endS: 200 })).toEqual([]);
  });
});

describe('plateaus', () => {
  const points = Array.from({ length: 3000 }, (_, timeS) => ({
    timeS,
    temperatureC:
      timeS < 900
        ? 20 + timeS / 20
        : timeS < 2100
          ? 78 + 0.3 * Math.sin(timeS)
          : 78 + (timeS - 2100) / 50,
  }));

  test('the longest stretch within a band is the plateau of the plot', () => {
    const found = longestPlateau(points, 0.7);
    expect(found?.fromS).toBe(900);
    expect(Math.abs((found?.toS ?? 0) - 2118)).toBeLessThan(6);
  });

  test('too few readings or no time between them is an error, not a NaN', () => {
    expect(() => plateauStatistics(points.slice(0, 2))).toThrow(OutOfRangeError);
    const [point] = points;
    expect(() => plateauStatistics(Array(5).fill(point))).toThrow(OutOfRangeError);
  });

  test('alike neighbours make the mean less certain than independent ones', () => {
    const random = createRandom('plateau');
    let slow = 0;
    const walk = Array.from({ length: 2000 }, (_, timeS) => {
      slow = 0.95 * slow + 0.1 * random.normal();
      return { timeS, temperatureC: 78 + slow };
    });
    const { standardDeviationK, standardUncertaintyOfMeanK } = plateauStatistics(walk);
    // n_eff = 2000 × 0.05/1.95 ≈ 51.
    expect((standardDeviationK / standardUncertaintyOfMeanK) ** 2).toBeGreaterThan(30);
    expect((standardDeviationK / standardUncertaintyOfMeanK) ** 2).toBeLessThan(85);
  });

  test('a plateau at 98.6 kPa moves up by the shift of the azeotrope', () => {
    expect(atStandardPressureC({ temperatureC: 77.5, pressureKPa: 98.6 })).toBeCloseTo(78.18, 1);
  });
});

describe('apparentPlates', () => {
  test('one simple distillation is one stage, and five steps up the curve are five', () => {
    const equilibrium = equilibriumCurve(101.325);
    let x = 0.05;
    for (let stage = 0; stage < 5; stage++) x = equilibrium(x);
    const found = apparentPlates({
      distillateMoleFraction: { value: x, low: x - 0.01, high: 0.95 },
      potMoleFraction: { value: 0.05, low: 0.05, high: 0.05 },
      pressureKPa: 101.325,
      refluxRatio: 2,
    });
    expect(found.stepped.value).toBeCloseTo(5, 2);
    expect(found.stepped.low).toBeLessThan(5);
    expect(found.stepped.high).toBeNull();
    expect(found.steppedAtReflux?.value ?? Number.POSITIVE_INFINITY).toBeGreaterThan(5);
    expect(found.fenske).not.toBeNull();
    expect(found.whyTheyDiffer).toMatch(/Relative volatility falls from \d/);
  });

  test('at the azeotrope no number of stages is given', () => {
    const found = apparentPlates({
      distillateMoleFraction: { value: 0.92, low: 0.88, high: 0.95 },
      potMoleFraction: { value: 0.05, low: 0.05, high: 0.05 },
      pressureKPa: 101.325,
      refluxRatio: null,
    });
    expect([found.stepped.value, found.fenske, found.stepped.high]).toEqual([null, null, null]);
  });
});

test("simple distillation gives the residue and distillate of Perry's worked example", () => {
  // Perry's Chemical Engineers' Handbook, section 13, simple batch: 100 mol of 18 mol % ethanol to a residue of 6 mol %
  // leaves 70 mol; the distillate has 46 mol %.
  const found = simpleDistillation({
    chargeMol: 100,
    potMoleFraction: 0.18,
    distillateMol: 30,
    pressureKPa: 101.325,
  });
  expect(found.residueMoleFraction).toBeCloseTo(0.06, 2);
  expect(found.distillateMoleFraction / 0.46).toBeCloseTo(1, 1);
});

test("yields follow Gay-Lussac's equation and Pasteur's balance", () => {
  // 100 g hexose: at most 51.14 g ethanol; Pasteur found 48.4 g (94.6 %). Of these 40 g distilled: 82.6 %, overall 78.2 %.
  const found = fermentYield({
    sugarG: about(100, 1),
    fermentEthanolG: about(48.4, 0.5),
    productEthanolG: about(40, 0.4),
  });
  expect([
    found.theoreticalG.value.toFixed(2),
    found.fermentationPercent.value.toFixed(1),
    found.distillationPercent.value.toFixed(1),
    found.overallPercent.value.toFixed(1),
    found.overallPercent.standardUncertainty.toFixed(1),
  ]).toEqual(['51.14', '94.6', '82.6', '78.2', '1.1']);
});
