import { describe, expect, test } from 'vitest';
import { createProbeSignal, createRandom, OutOfRangeError } from '#shared-core';
import type { ProbeFlaws } from '../../../shared-core/column/create-probe-signal.ts';

const readings = (flaws: Omit<ProbeFlaws, 'random'>, count: number, temperatureC = 78) => {
  const probe = createProbeSignal({ random: createRandom('probe'), ...flaws });
  return Array.from({ length: count }, (_, timeS) => probe.read(timeS, temperatureC));
};
const numbers = (values: readonly (number | null)[]) => values.filter((value) => value !== null);
const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: readonly number[]) => {
  const centre = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - centre) ** 2)));
};

describe('createProbeSignal', () => {
  test('a perfect probe reports the truth', () => {
    expect(readings({}, 3)).toEqual([78, 78, 78]);
  });

  test('after a step the probe has 90 % of it at t90', () => {
    const probe = createProbeSignal({ random: createRandom(1), t90S: 10 });
    probe.read(0, 20);
    for (let timeS = 0.5; timeS < 10; timeS += 0.5) probe.read(timeS, 80);
    expect(probe.read(10, 80)).toBeCloseTo(74, 9);
  });

  test('slow noise has its size and memory, however often it is read', () => {
    for (const every of [1, 5]) {
      const probe = createProbeSignal({
        random: createRandom('slow'),
        slowNoiseK: 0.1,
        slowNoiseS: 15,
      });
      const values = Array.from({ length: 20_000 }, (_, index) => probe.read(index * every, 78));
      const noise = numbers(values).map((value) => value - 78);
      expect(deviation(noise)).toBeGreaterThan(0.095);
      expect(deviation(noise)).toBeLessThan(0.105);
      const lag = 15 / every;
      const products = noise.slice(lag).map((value, index) => value * (noise[index] as number));
      expect(mean(products) / 0.01).toBeGreaterThan(Math.exp(-1) - 0.07);
      expect(mean(products) / 0.01).toBeLessThan(Math.exp(-1) + 0.07);
    }
  });

  test('a bulb with a slower part reaches 90 % of a step later than one lag would, as real ones do', () => {
    const slow = { t90S: 23, slowShare: 0.27, slowShareS: 50 };
    const probe = createProbeSignal({ random: createRandom(1), ...slow });
    const shares = Array.from({ length: 4000 }, (_, index) => {
      const value = probe.read(index / 10, index === 0 ? 20 : 80) ?? Number.NaN;
      return (value - 20) / 60;
    });
    const reaches = (share: number) => shares.findIndex((value) => value >= share) / 10;
    // One lag alone has ln 10 = 2.30; eight one-wire sensors in ice water had 2.6 … 4.6 (test/reference/real-traces).
    expect(reaches(0.9) / reaches(1 - Math.exp(-1))).toBeGreaterThan(2.6);
    expect(reaches(0.9) / reaches(1 - Math.exp(-1))).toBeLessThan(4.6);
    // 1 − 0.73 e^(−t/10) − 0.27 e^(−t/50) at 30 s.
    expect(shares[300]).toBeCloseTo(1 - 0.73 * Math.exp(-3) - 0.27 * Math.exp(-0.6), 2);
  });

  test('wander shows in means of a minute, which noise alone does not reach', () => {
    const minutes = (flaws: Omit<ProbeFlaws, 'random'>): number => {
      const values = numbers(readings(flaws, 60_000)).map((value) => value - 78);
      const means = Array.from({ length: 1000 }, (_, minute) =>
        mean(values.slice(60 * minute, 60 * minute + 60)),
      );
      return deviation(means);
    };
    expect(minutes({ whiteNoiseK: 0.02 })).toBeLessThan(0.004);
    expect(minutes({ whiteNoiseK: 0.02, wanderK: 0.03 })).toBeGreaterThan(0.02);
  });

  test('fault values come in bursts of some seconds, as often as said', () => {
    const values = readings({ burstsPerHour: 12, burstS: 5, faultC: -127 }, 100_000);
    const faults = values.filter((value) => value === -127).length;
    const bursts = values.filter((value, at) => value === -127 && values[at - 1] !== -127).length;
    expect(bursts).toBeGreaterThan(270);
    expect(bursts).toBeLessThan(400);
    expect(faults / bursts).toBeGreaterThan(3);
    expect(faults / bursts).toBeLessThan(8);
  });

  test('bias and drift add up, and the quantum rounds to sixteenths', () => {
    const values = numbers(readings({ biasK: 0.3, driftKPerHour: 0.6, quantumK: 1 / 16 }, 3601));
    expect(values[0]).toBe(78.3125);
    expect(values[3600]).toBe(78.875);
    expect(values.every((value) => Number.isInteger(value * 16))).toBe(true);
  });

  test('dropouts and spikes come as often as said', () => {
    const dropped = readings({ dropoutsPerHour: 12, dropoutS: 10 }, 100_000);
    const missing = dropped.filter((value) => value === null).length / 100_000;
    // 12 × 10 s an hour, and a spell is seen for half a reading more than it lasts.
    expect(missing).toBeGreaterThan(0.025);
    expect(missing).toBeLessThan(0.045);
    const spiked = numbers(readings({ spikesPerHour: 36, spikeK: 20 }, 100_000));
    const wrong = spiked.filter((value) => Math.abs(value - 78) > 0.1).length;
    expect(wrong).toBeGreaterThan(900);
    expect(wrong).toBeLessThan(1100);
  });

  test('a sensor that loses power shows 85.0 first, and again after each dropout', () => {
    const values = readings(
      { powerOnReadings: 1, resetsOnDropout: true, dropoutsPerHour: 60, dropoutS: 5 },
      3600,
    );
    expect(values[0]).toBe(85);
    values.forEach((value, index) => {
      if (index === 0 || value === null) return;
      expect(value).toBe(values[index - 1] === null ? 85 : 78);
    });
  });

  test('the same seed gives the same readings', () => {
    const flaws = { whiteNoiseK: 0.1, slowNoiseK: 0.1, dropoutsPerHour: 20, spikesPerHour: 20 };
    expect(readings(flaws, 500)).toEqual(readings(flaws, 500));
  });

  test('NaN, time running backwards and senseless flaws are refused', () => {
    const random = createRandom(1);
    const probe = createProbeSignal({ random });
    probe.read(5, 20);
    expect(() => probe.read(6, Number.NaN)).toThrow(OutOfRangeError);
    expect(() => probe.read(4, 20)).toThrow(OutOfRangeError);
    expect(() => createProbeSignal({ random, slowNoiseS: 0 })).toThrow(OutOfRangeError);
    expect(() => createProbeSignal({ random, slowShare: 0.6 })).toThrow(OutOfRangeError);
  });
});
