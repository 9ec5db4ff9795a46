import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  createRandom,
  lagCorrectedTemperature,
  lagNoisePenalty,
  lagTimeConstantS,
  OutOfRangeError,
  rampLagK,
  t90FromPlunge,
} from '#shared-core';

const timeConstantS = 6.5;

/** What a first-order bulb shows on a ramp that began at −∞: the ramp, τ later. */
const onRamp = (slopeKPerS: number) => (timeS: number) => 20 + slopeKPerS * (timeS - timeConstantS);

const window = (count: number, stepS: number, shown: (timeS: number) => number) =>
  Array.from({ length: count }, (_, index) => {
    const timeS = (index - count + 1) * stepS;
    return { timeS, temperatureC: shown(timeS) };
  });

describe('lag', () => {
  test('after one t90 a first-order probe has gone 90 % of a step', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 600, noNaN: true }), (t90S) => {
        expect(1 - Math.exp(-t90S / lagTimeConstantS(t90S))).toBeCloseTo(0.9, 12);
      }),
    );
  });

  test('a simulated bulb on a ramp lags by τ times the slope', () => {
    const slopeKPerS = 0.2;
    let shown = 20;
    const stepS = 0.001;
    for (let timeS = 0; timeS < 60; timeS += stepS) {
      shown += ((20 + slopeKPerS * timeS - shown) / timeConstantS) * stepS;
    }
    expect(20 + slopeKPerS * 60 - shown).toBeCloseTo(rampLagK({ timeConstantS, slopeKPerS }), 2);
  });

  test.each([-1, 601, Number.NaN])('a response time of %d s is refused', (t90S) => {
    expect(() => lagTimeConstantS(t90S)).toThrow(OutOfRangeError);
  });
});

describe('t90FromPlunge', () => {
  test('finds the response time of an exponential, up or down, whatever the moment of the plunge', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 40, noNaN: true }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        fc.boolean(),
        (t90S, plungeTimeS, rising) => {
          const [startC, endC] = rising ? [0, 99] : [99, 0];
          const readings = Array.from({ length: 400 }, (_, index) => {
            const timeS = plungeTimeS + 0.3 + index * 0.5;
            const part = 1 - 10 ** (-(timeS - plungeTimeS) / t90S);
            return { timeS, temperatureC: startC + part * (endC - startC) };
          });
          const found = t90FromPlunge({ readings, plungeTimeS, startC, endC });
          expect(found.ok && Math.abs(found.value - t90S)).toBeLessThan(0.05);
        },
      ),
    );
  });

  const still = [{ timeS: 1, temperatureC: 50 }];
  test.each([
    [
      { readings: still, plungeTimeS: 0, startC: 0, endC: 100 },
      { kind: 'never-reached', lastC: 50, targetC: 90 },
    ],
    [
      { readings: still, plungeTimeS: 0, startC: 20, endC: 25 },
      { kind: 'step-too-small', stepK: 5, leastK: 10 },
    ],
    [{ readings: still, plungeTimeS: Number.NaN, startC: 0, endC: 100 }, { kind: 'not-a-number' }],
  ])('says why there is none: %o', (plunge, error) => {
    expect(t90FromPlunge(plunge)).toEqual({ ok: false, error });
  });
});

describe('lagCorrectedTemperature', () => {
  test('is exact on any ramp, for uneven times too', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.uniqueArray(fc.integer({ min: -60, max: -1 }), { minLength: 2, maxLength: 20 }),
        (slopeKPerS, earlier) => {
          const shown = onRamp(slopeKPerS);
          const readings = [...earlier.sort((a, b) => a - b), 0].map((timeS) => ({
            timeS,
            temperatureC: shown(timeS),
          }));
          const corrected = lagCorrectedTemperature({ readings, timeConstantS });
          expect(corrected.temperatureC).toBeCloseTo(20, 8);
          expect(corrected.lagK).toBeCloseTo(slopeKPerS * timeConstantS, 8);
        },
      ),
    );
  });

  test('its noise is the stated penalty times the noise of one reading', () => {
    const random = createRandom('lag noise');
    for (const [count, stepS] of [
      [5, 1],
      [15, 1],
      [20, 0.75],
    ] as const) {
      const draws = Array.from({ length: 20_000 }, () =>
        lagCorrectedTemperature({
          readings: window(count, stepS, (timeS) => onRamp(0.1)(timeS) + 0.05 * random.normal()),
          timeConstantS,
        }),
      );
      const errors = draws.map(({ temperatureC }) => temperatureC - 20);
      const spread = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
      const penalty = lagNoisePenalty({
        timesS: window(count, stepS, () => 0).map(({ timeS }) => timeS),
        timeConstantS,
      });
      expect(Math.abs(spread / (0.05 * penalty) - 1)).toBeLessThan(0.03);
      expect(draws[0]?.noisePenalty).toBe(penalty);
      // The window's own scatter is an unbiased guide to the same variance.
      const stated = Math.sqrt(
        draws.reduce((sum, draw) => sum + draw.standardUncertaintyK ** 2, 0) / draws.length,
      );
      expect(Math.abs(stated / spread - 1)).toBeLessThan(0.04);
    }
  });

  test('the penalty for even steps has the closed form in the description', () => {
    const [count, stepS] = [12, 0.5];
    const expected = Math.sqrt(
      1 / count +
        (12 * (timeConstantS + ((count - 1) * stepS) / 2) ** 2) /
          (count * (count ** 2 - 1) * stepS ** 2),
    );
    const timesS = window(count, stepS, () => 0).map(({ timeS }) => timeS);
    expect(lagNoisePenalty({ timesS, timeConstantS })).toBeCloseTo(expected, 12);
  });

  test('a curved course is biased as the description says', () => {
    const [curvature, lengthS, count] = [0.004, 10, 2001];
    const readings = window(count, lengthS / (count - 1), (timeS) => 0.5 * curvature * timeS ** 2);
    const stated = -curvature * (lengthS ** 2 / 12 + (lengthS * timeConstantS) / 2);
    expect(lagCorrectedTemperature({ readings, timeConstantS }).temperatureC).toBeCloseTo(
      stated,
      3,
    );
  });

  test('a noise that is known replaces the scatter of the window', () => {
    const readings = window(5, 1, onRamp(0.1));
    const corrected = lagCorrectedTemperature({ readings, timeConstantS, noiseK: 0.02 });
    expect(corrected.standardUncertaintyK).toBeCloseTo(0.02 * corrected.noisePenalty, 12);
  });

  test('refuses too few readings, one time, and numbers that are none', () => {
    const readings = window(5, 1, onRamp(0.1));
    const refused = [
      { readings: readings.slice(3), timeConstantS },
      { readings: readings.map((one) => ({ ...one, timeS: 1 })), timeConstantS },
      { readings, timeConstantS: Number.NaN },
      { readings, timeConstantS, noiseK: Number.NaN },
      { readings: readings.with(2, { timeS: -2, temperatureC: Number.NaN }), timeConstantS },
      { readings: readings.with(2, { timeS: Number.NaN, temperatureC: 20 }), timeConstantS },
    ];
    for (const wrong of refused) {
      expect(() => lagCorrectedTemperature(wrong)).toThrow(OutOfRangeError);
    }
  });
});
