import { describe, expect, test } from 'vitest';
import { createRandom, defaultRunSettings, type RunSettings } from '#shared-core';
import { azeotrope } from '../../../shared-core/equilibrium/azeotrope.ts';
import { azeotropeSlopeKPerKPa } from '../../../shared-core/equilibrium/azeotrope-slope.ts';
import { limitTemperatureC } from '../../../shared-core/equilibrium/limit-temperature.ts';
import { benchOf, drawHalfRun, type HalfRun } from '../../../shared-core/planning/half-run.ts';
import { forecastHalfWay } from '../../../shared-core/planning/instrument-gains.ts';
import { potReading } from '../../../shared-core/twin/pot-reading.ts';

const settings: RunSettings = {
  ...defaultRunSettings,
  pressure: {
    pressureKPa: 99.4,
    standardUncertaintyKPa: 0.2,
    source: 'barometer',
    altitudeM: null,
  },
};

/** A pot's own 0.4 K, and of the pressure's 0.05 K what the head's offset does not tell. */
const { offsetShare, sd } = potReading(0, 0, benchOf(settings));
const potDoubt = { offsetShare, sd };

/** Some stills that could be the one on the bench. */
function stills(count: number, of: RunSettings = settings): readonly HalfRun[] {
  const random = createRandom('half runs');
  const drawn: HalfRun[] = [];
  for (let tried = 0; drawn.length < count && tried < 8 * count; tried += 1) {
    const half = drawHalfRun(benchOf(of), random);
    if (half !== null) drawn.push(half);
  }
  return drawn;
}

describe('a bench before its run', () => {
  test('has its limit above the azeotrope, and head, pressure and the model off together by the sum of squares', () => {
    const { limitHeightK, offsetSdK, pressureSdK } = benchOf(settings);
    expect(limitHeightK).toBeCloseTo(
      limitTemperatureC({ leastStrengthAbv: 80, pressureKPa: 99.4 }) - azeotrope(99.4).temperatureC,
      9,
    );
    // The probe to 0.25 K, the pressure to 0.2 kPa, a column's head off the twin's by 0.5 K.
    expect(pressureSdK).toBeCloseTo(azeotropeSlopeKPerKPa(99.4) * 0.2, 9);
    expect(offsetSdK).toBeCloseTo(Math.hypot(0.25, pressureSdK, 0.5), 9);
  });
});

describe('a still watched to half of its main fraction', () => {
  test('is read every minute from the third on, its receiver every fourth, and no more after the half', () => {
    for (const { boiledS, head, receiver, pot, leftS } of stills(6)) {
      const minutes = Array.from({ length: boiledS / 60 - 3 }, (_, index) => 180 + 60 * index);
      expect(head.map((read) => read.boiledS)).toEqual(minutes);
      expect(pot.map((read) => read.boiledS)).toEqual(minutes);
      expect(receiver.map((read) => read.boiledS)).toEqual(
        minutes.filter((timeS) => timeS % 240 === 0),
      );
      expect(boiledS).toBeGreaterThan(900 / 2 / 2);
      expect(leftS).toBeGreaterThan(0);
    }
  });

  test('has as much before it as behind it, in the middle of many', () => {
    const ratios = stills(60).map(({ boiledS, leftS }) => leftS / boiledS);
    const middle = ratios.toSorted((a, b) => a - b)[30]!;
    expect(middle).toBeGreaterThan(0.85);
    expect(middle).toBeLessThan(1.15);
  });

  test('has a head near its azeotrope, a pot that gets hotter and a receiver that fills', () => {
    for (const { head, receiver, pot } of stills(6)) {
      const values = (read: typeof head) =>
        read.map((one) => ('value' in one ? one.value : Number.NaN));
      const [heads, pots, volumes] = [head, pot, receiver].map(values) as [
        number[],
        number[],
        number[],
      ];
      expect(heads.every((heightK) => Math.abs(heightK) < 8)).toBe(true);
      expect(pots.every((heightK) => heightK > 8 && heightK < 24)).toBe(true);
      expect(pots.at(-1)!).toBeGreaterThan(pots[0]! - 0.5);
      // A quick still is read only once.
      const gainMl = volumes.length === 1 ? volumes[0]! : volumes.at(-1)! - volumes[0]!;
      expect(gainMl).toBeGreaterThan(1);
      expect(head.map((one) => 'sd' in one && one.sd)).toEqual(head.map(() => 0.1));
      expect(pot).toEqual(pot.map(() => expect.objectContaining(potDoubt)));
    }
  });

  test('has a heat that a person would state: that of the vapour, to a few per cent', () => {
    const stated = stills(40, { ...settings, rig: { ...settings.rig, heatW: 120 } }).map(
      ({ statedHeatW }) => statedHeatW / 120,
    );
    const middle = stated.toSorted((a, b) => a - b)[20]!;
    expect(middle).toBeGreaterThan(0.9);
    expect(middle).toBeLessThan(1.1);
    expect(new Set(stated).size).toBe(40);
  });

  test('is none where the charge gives no main fraction', () => {
    const charge = { volumeMl: 350, strengthAbv: 1, standardUncertaintyAbv: 0.2 };
    expect(stills(1, { ...settings, charge })).toEqual([]);
  });
});

test('each instrument beside the head changes what is forecast half-way, and a balance narrows it', () => {
  const bench = benchOf(settings);
  const [half] = stills(1);
  const told = (['nothing', 'stated-heat', 'balance', 'pot-probe'] as const).map((beside) =>
    forecastHalfWay(half!, beside, bench),
  );
  expect(new Set(told.map(({ value }) => value)).size).toBe(4);
  const [nothing, , balance] = told;
  expect(balance!.high - balance!.low).toBeLessThan(nothing!.high - nothing!.low);
});
