import { expect, test } from 'vitest';
import { defaultRunSettings } from '#shared-core';
import { createLimitScale } from '../../../../shared-core/monitor/situation/limit-scale.ts';
import {
  believeScale,
  ofOtherProbe,
  priorScale,
  probabilityAbove,
  probabilityPossible,
  statedScaleSdK,
  trueTemperatureQuantileC,
} from '../../../../shared-core/monitor/situation/scale-belief.ts';
import { createVapourScale } from '../../../../shared-core/monitor/situation/vapour-scale.ts';

const settings = {
  ...defaultRunSettings,
  pressure: {
    pressureKPa: 98.6,
    standardUncertaintyKPa: 0.1,
    source: 'barometer' as const,
    altitudeM: null,
  },
  safetyConfirms: [{ check: 'bulb', role: 'technician' as const }],
};
const scale = createVapourScale(98.6, 80);

test('a level that no vapour can have moves the offset below it, and what it leaves open is wide', () => {
  const lowestC = scale.azeotropeC - 4;
  const belief = believeScale(settings, scale, { lowestC, lowestSdK: 0.05, lowestLaterC: lowestC });
  expect(belief.meanK).toBeLessThan(-3.5);
  expect(belief.sdK).toBeGreaterThan(priorScale(settings, scale).sdK / 2);
});

test('a level just above the azeotrope leaves a scale that was told well where it was', () => {
  const lowestC = scale.azeotropeC + 0.4;
  const belief = believeScale(settings, scale, { lowestC, lowestSdK: 0.05, lowestLaterC: lowestC });
  expect(Math.abs(belief.meanK)).toBeLessThan(0.3);
});

test('where nobody entered an air pressure a head that holds 5 K low is believed to stand high up', () => {
  const unknown = createVapourScale(defaultRunSettings.pressure.pressureKPa, 80);
  const lowestC = unknown.azeotropeC - 5;
  const belief = believeScale(defaultRunSettings, unknown, {
    lowestC,
    lowestSdK: 0.05,
    lowestLaterC: lowestC,
  });
  expect(belief.meanK).toBeLessThan(-4.8);
  expect(probabilityAbove(belief, lowestC + 5.5, 0.1, unknown.limitC)).toBeGreaterThan(0.5);
});

test('a bulb at which nobody looked may hang high: much lower offsets are left open', () => {
  const unseen = { ...settings, safetyConfirms: [] };
  const lowestC = scale.azeotropeC + 2;
  const evidence = { lowestC, lowestSdK: 0.05, lowestLaterC: lowestC };
  const lowK = (known: typeof settings): number =>
    trueTemperatureQuantileC(believeScale(known, scale, evidence), lowestC, 0.05, 0.975) - lowestC;
  expect(lowK(unseen)).toBeGreaterThan(lowK(settings) + 0.5);
});

test('a quantile of the true temperature has that much probability below it', () => {
  const belief = priorScale(settings, scale);
  for (const probability of [0.025, 0.5, 0.975]) {
    const atC = trueTemperatureQuantileC(belief, 78.2, 0.1, probability);
    expect(1 - probabilityAbove(belief, 78.2, 0.1, atC)).toBeCloseTo(probability, 2);
  }
});

test('a quantile is found at either end, of one offset as of many, by a sharp head as by one that is hardly known', () => {
  const one = { meanK: 0.5, sdK: 0.03, offsetsK: [0.5], weights: [1] };
  const many = priorScale(settings, scale);
  for (const belief of [one, many]) {
    for (const sdK of [0.02, 1, 6]) {
      for (const probability of [0.001, 0.2, 0.8, 0.999]) {
        const atC = trueTemperatureQuantileC(belief, 78.2, sdK, probability);
        expect(1 - probabilityAbove(belief, 78.2, sdK, atC)).toBeCloseTo(probability, 2);
      }
    }
  }
  // 78.2 − 0.5 and 1.2816 standard deviations below and above.
  expect(trueTemperatureQuantileC(one, 78.2, 2, 0.1)).toBeCloseTo(77.7 - 2 * 1.2816, 2);
  expect(trueTemperatureQuantileC(one, 78.2, 2, 0.9)).toBeCloseTo(77.7 + 2 * 1.2816, 2);
});

test('a level that no offset explains leaves all as it was believed', () => {
  const lowestC = scale.azeotropeC - 100;
  const evidence = { lowestC, lowestSdK: 0.05, lowestLaterC: lowestC };
  const unexplained = believeScale(settings, scale, evidence);
  const prior = priorScale(settings, scale);
  expect([unexplained.meanK, unexplained.sdK]).toEqual([
    expect.closeTo(prior.meanK, 9),
    expect.closeTo(prior.sdK, 9),
  ]);
});

test('a level that nothing explains leaves finite numbers', () => {
  for (const lowestC of [scale.azeotropeC - 11.9, 20, scale.waterC]) {
    const belief = believeScale(settings, scale, {
      lowestC,
      lowestSdK: 0.05,
      lowestLaterC: lowestC,
    });
    expect([belief.meanK, belief.sdK].every(Number.isFinite)).toBe(true);
    expect(belief.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
  }
});

test('steam leaves probe and pressure together as little open as its own doubt, until a barometer is read', () => {
  const probe = { ...settings.probe, standardUncertaintyK: 0.4 };
  const steam = { shownC: 99.2, standardUncertaintyK: 0.03, gapStandardUncertaintyK: 0.064 };
  const pressure = {
    ...settings.pressure,
    standardUncertaintyKPa: 1.4,
    source: 'steam',
    steam,
  } as const;
  const bySteam = { ...settings, probe, pressure };
  const statedK = statedScaleSdK(bySteam, scale);
  // √((0.1 · 0.4)² + (0.9 · 0.03)² + (0.9 · 0.05)²/3 + 0.064²) of steam, 0.05 K of the model, 0.02 K of the weather.
  expect(statedK).toBeCloseTo(Math.hypot(0.04, 0.027, 0.026, 0.064, 0.05, 0.017), 2);
  expect(statedK).toBeLessThan(priorScale(bySteam, scale).sdK);
  const asTwo = { ...bySteam, pressure: { ...pressure, source: 'barometer' as const } };
  expect(statedScaleSdK(asTwo, scale)).toBeCloseTo(
    Math.hypot(0.4, scale.kelvinPerKPa * 1.4, 0.05),
    9,
  );
  const limitScale = createLimitScale(bySteam);
  limitScale.hearPressure(97);
  expect(limitScale.settings().pressure).toEqual(pressure);
  limitScale.setPressure(98.2);
  expect(limitScale.settings().pressure.source).toBe('barometer');
  expect(statedScaleSdK(limitScale.settings(), scale)).toBeCloseTo(
    Math.hypot(0.4, scale.kelvinPerKPa * 0.3, 0.05),
    9,
  );
});

test('steam says nothing of how the bulb hangs: that stays as open as it was', () => {
  const steam = { shownC: 99.2, standardUncertaintyK: 0.03, gapStandardUncertaintyK: 0.064 };
  const pressure = { ...settings.pressure, source: 'steam' as const, steam };
  const lowK = (
    known: typeof settings | (Omit<typeof settings, 'pressure'> & { pressure: typeof pressure }),
  ) => {
    const { offsetsK, weights } = priorScale(known, scale);
    return offsetsK.reduce(
      (sum, offsetK, index) => (offsetK < -2 ? sum + (weights[index] ?? 0) : sum),
      0,
    );
  };
  expect(lowK({ ...settings, pressure })).toBeCloseTo(lowK(settings), 2);
});

test('vapour is as likely possible as it lies above the azeotrope, or half a kelvin below, by the offsets believed', () => {
  const belief = { meanK: 0, sdK: 0.7, offsetsK: [-1, 0, 1], weights: [0.25, 0.5, 0.25] };
  const possible = (aboveK: number) => probabilityPossible(belief, 78 + aboveK, 78);
  expect([-2, -0.6, -0.4, 0.4, 1].map(possible)).toEqual([0, 0.25, 0.75, 0.75, 1]);
});

/** What a belief holds of an offset, against another. */
function ratioAt(belief: ReturnType<typeof priorScale>, offsetK: number, otherK: number): number {
  const at = (wantedK: number) =>
    belief.weights[belief.offsetsK.findIndex((it) => Math.abs(it - wantedK) < 0.01)] as number;
  return at(offsetK) / at(otherK);
}

const seen = { ...defaultRunSettings, safetyConfirms: settings.safetyConfirms };

/** The exponential towards the low side and the normal distribution folded, by the sum over steps of 0.01 K. */
function blurredLow(offsetK: number): number {
  const blurK = Math.hypot(seen.probe.standardUncertaintyK, 0.4);
  let sum = 0;
  for (let lowK = 0.005; lowK < 30; lowK += 0.01) {
    const sds = (offsetK + lowK) / blurK;
    sum += (0.01 * Math.exp(-lowK / 2.5 - sds ** 2 / 2)) / (2.5 * blurK * Math.sqrt(2 * Math.PI));
  }
  return sum;
}

/** Of the 15 % of bulbs that hang oddly although somebody looked, 65 % read low by 1.5 K on the mean, the others high by 0.6 K. */
const oddDensity = (offsetK: number): number =>
  offsetK < 0 ? (0.65 / 1.5) * Math.exp(offsetK / 1.5) : (0.35 / 0.6) * Math.exp(-offsetK / 0.6);

/** A density with the oddly hung bulbs beside it: theirs comes on top of what pressure and calibration do, by the midpoint rule. */
const hungOddly = (density: (offsetK: number) => number, offsetK: number): number => {
  const stepK = 0.005;
  let odd = 0;
  for (let byK = -12 + stepK / 2; byK < 6; byK += stepK) {
    odd += stepK * oddDensity(byK) * density(offsetK - byK);
  }
  return 0.85 * density(offsetK) + 0.15 * odd;
};

test('without an air pressure offsets fall off towards the low side by 2.5 K, blurred by probe and weather; 15 % hang oddly on top of that', () => {
  const prior = priorScale(seen, createVapourScale(101.325, 80));
  for (const offsetK of [-6, -4, -0.5, 0, 0.4, 0.8]) {
    const ratio = hungOddly(blurredLow, offsetK) / hungOddly(blurredLow, -2);
    expect(ratioAt(prior, offsetK, -2) / ratio).toBeCloseTo(1, 3);
  }
});

test('a barometer on the line may lie as if there were none, unless somebody has told how high the place is', () => {
  const pressure = { ...seen.pressure, pressureKPa: 98.6, standardUncertaintyKPa: 0.3 };
  const heard = { ...seen, pressure: { ...pressure, source: 'channel' as const } };
  const told = { ...seen, pressure: { ...heard.pressure, altitudeM: 230 } };
  const statedK = Math.hypot(0.25, scale.kelvinPerKPa * 0.3, 0.05);
  const stated = (offsetK: number): number =>
    Math.exp(-((offsetK / statedK) ** 2) / 2) / (statedK * Math.sqrt(2 * Math.PI));
  const seaLevelK = createVapourScale(101.325, 80).azeotropeC - scale.azeotropeC;
  const mixed = (offsetK: number): number =>
    (2 / 3) * stated(offsetK) + (1 / 3) * blurredLow(offsetK - seaLevelK);
  for (const [known, density] of [
    [heard, mixed],
    [told, stated],
  ] as const) {
    const prior = priorScale(known, scale);
    for (const offsetK of [-3, -1, 0.5]) {
      const ratio = hungOddly(density, offsetK) / hungOddly(density, 0);
      expect(ratioAt(prior, offsetK, 0) / ratio).toBeCloseTo(1, 3);
    }
  }
});

/** How densely columns hold at so much above the azeotrope: seven in ten by half a kelvin on the mean, the others by three [1/K]. */
const heightDensity = (heightK: number) =>
  heightK < 0 ? 0 : (0.7 / 0.5) * Math.exp(-heightK / 0.5) + (0.3 / 3) * Math.exp(-heightK / 3);

test('a lowest level weighs each offset by how likely a column holds so far above the azeotrope', () => {
  const lowestC = scale.azeotropeC + 0.4;
  const evidence = { lowestC, lowestSdK: 0.01, lowestLaterC: lowestC };
  const belief = believeScale(settings, scale, evidence);
  const prior = priorScale(settings, scale);
  for (const offsetK of [-1, -0.4, 0.2]) {
    expect(ratioAt(belief, offsetK, 0) / ratioAt(prior, offsetK, 0)).toBeCloseTo(
      heightDensity(0.4 - offsetK) / heightDensity(0.4),
      6,
    );
  }
});

test.each([
  ['none yet', null],
  ['a higher one', 1.9],
])(
  'in one charge of twelve lighter volatiles held the first level, and the later ones count: %s',
  (_, laterK) => {
    const evidence = {
      lowestC: scale.azeotropeC + 0.4,
      lowestSdK: 0.01,
      lowestLaterC: laterK === null ? null : scale.azeotropeC + laterK,
    };
    const belief = believeScale(settings, scale, evidence);
    const prior = priorScale(settings, scale);
    const likelihood = (offsetK: number) =>
      0.92 * heightDensity(0.4 - offsetK) +
      0.08 * (laterK === null ? 0.1 : heightDensity(laterK - offsetK));
    for (const offsetK of [-1, -0.4, 0.2]) {
      expect(ratioAt(belief, offsetK, 0) / ratioAt(prior, offsetK, 0)).toBeCloseTo(
        likelihood(offsetK) / likelihood(0),
        6,
      );
    }
  },
);

test('of another probe it is believed that it may be off by half a kelvin more, and by all that the first was corrected by', () => {
  const learnt = { meanK: -0.4, sdK: 0.2, offsetsK: [-0.6, -0.2], weights: [0.5, 0.5] };
  const { probe } = settings;
  for (const [offsetK, sdK] of [
    [0, 0.5],
    [-1.2, Math.hypot(0.5, 1.2)],
  ] as const) {
    const other = ofOtherProbe(learnt, { ...probe, offsetK, gain: 1 });
    expect(other.meanK).toBeCloseTo(-0.4, 3);
    // The grid of 0.1 K counts for its own share, as in every belief.
    expect(other.sdK / Math.hypot(0.2, sdK, 0.1 / Math.sqrt(12))).toBeCloseTo(1, 2);
  }
});
