import { describe, expect, test } from 'vitest';
import {
  createRandom,
  densityKgPerM3,
  massFractionFromAlcoholByVolume,
  OutOfRangeError,
} from '#shared-core';
import { sodaLimeGlassExpansionPerK } from '../../../shared-core/alcoholometry/glass-expansion.ts';
import {
  densityFromHydrometer,
  strengthFromAlcoholometer,
} from '../../../shared-core/alcoholometry/hydrometer.ts';
import { densityFromPycnometer } from '../../../shared-core/alcoholometry/pycnometer.ts';
import { strengthFromDensity } from '../../../shared-core/alcoholometry/strength-from-density.ts';

const sure = { readingUncertaintyAbv: 0, temperatureUncertaintyK: 0 };

describe('strengthFromAlcoholometer', () => {
  test('returns the reading itself at 20 °C', () => {
    for (const abv of [0.5, 12, 40, 80, 96]) {
      const strength = strengthFromAlcoholometer({ indicatedAbv: abv, temperatureC: 20, ...sure });
      expect(strength.alcoholByVolume).toEqual({
        value: expect.closeTo(abv, 8),
        low: expect.closeTo(abv, 8),
        high: expect.closeTo(abv, 8),
      });
    }
  });

  test('recovers the strength of a liquid that the instrument was computed to float in', () => {
    for (const abv of [10, 40, 70, 92]) {
      for (const temperatureC of [5, 15, 30, 38]) {
        const ethanolMassFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: abv });
        const density = densityKgPerM3({ ethanolMassFraction, temperatureC });
        const mark = density * (1 + sodaLimeGlassExpansionPerK * (temperatureC - 20));
        const seen = strengthFromDensity({
          densityKgPerM3: mark,
          temperatureC: 20,
          densityUncertaintyKgPerM3: 0,
          temperatureUncertaintyK: 0,
        });
        const strength = strengthFromAlcoholometer({
          indicatedAbv: seen.alcoholByVolume.value,
          temperatureC,
          ...sure,
        });
        expect(strength.alcoholByVolume.value).toBeCloseTo(abv, 6);
      }
    }
  });

  test('takes off some 0.4 % vol for each kelvin a warm 40 % spirit is above 20 °C', () => {
    // Rule of the trade (common practice, no source): four tenths of a % vol per kelvin.
    const strength = strengthFromAlcoholometer({ indicatedAbv: 40, temperatureC: 30, ...sure });
    expect(strength.alcoholByVolume.value).toBeGreaterThan(35.8);
    expect(strength.alcoholByVolume.value).toBeLessThan(36.2);
  });

  test('widens its interval with both doubts', () => {
    const { low, high } = strengthFromAlcoholometer({
      indicatedAbv: 40,
      temperatureC: 25,
      readingUncertaintyAbv: 0.25,
      temperatureUncertaintyK: 0.5,
    }).alcoholByVolume;
    // √((1.96 · 0.25)² + (1.96 · 0.5 · 0.38)²) ≈ 0.6 % vol.
    expect((high - low) / 2).toBeGreaterThan(0.5);
    expect((high - low) / 2).toBeLessThan(0.75);
  });

  test('refuses readings outside its range, NaN included', () => {
    for (const bad of [
      { indicatedAbv: Number.NaN },
      { indicatedAbv: 100.1 },
      { temperatureC: Number.NaN },
      { temperatureC: 41 },
      { readingUncertaintyAbv: Number.NaN },
      { temperatureUncertaintyK: -1 },
    ]) {
      const reading = { indicatedAbv: 40, temperatureC: 20, ...sure, ...bad };
      expect(() => strengthFromAlcoholometer(reading)).toThrow(OutOfRangeError);
    }
  });
});

describe('strengthFromDensity', () => {
  test('covers the truth with its 95 % interval in 93 … 97 % of 4 000 simulated measurements', () => {
    const random = createRandom('strength from density');
    let inside = 0;
    for (let index = 0; index < 4000; index++) {
      const abv = 5 + 90 * random.uniform();
      const temperatureC = 5 + 30 * random.uniform();
      const ethanolMassFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: abv });
      const { low, high } = strengthFromDensity({
        densityKgPerM3:
          densityKgPerM3({ ethanolMassFraction, temperatureC }) + 0.5 * random.normal(),
        temperatureC: temperatureC + 0.3 * random.normal(),
        densityUncertaintyKgPerM3: 0.5,
        temperatureUncertaintyK: 0.3,
      }).alcoholByVolume;
      inside += Number(low <= abv && abv <= high);
    }
    expect(inside / 4000).toBeGreaterThan(0.93);
    expect(inside / 4000).toBeLessThan(0.97);
  });

  test('stops at pure water when the density lies beyond it by less than the doubt', () => {
    const { ethanolMassFraction } = strengthFromDensity({
      densityKgPerM3: 998.5,
      temperatureC: 20,
      densityUncertaintyKgPerM3: 0.5,
      temperatureUncertaintyK: 0,
    });
    expect(ethanolMassFraction).toEqual({ value: 0, low: 0, high: expect.closeTo(0.0036, 3) });
  });

  test('refuses a liquid denser than water: sugar is dissolved in it', () => {
    expect(() =>
      strengthFromDensity({
        densityKgPerM3: 1045,
        temperatureC: 20,
        densityUncertaintyKgPerM3: 0.5,
        temperatureUncertaintyK: 0,
      }),
    ).toThrow(OutOfRangeError);
  });
});

describe('densityFromPycnometer', () => {
  test('recovers the density of a sample weighed in air at another temperature than the water', () => {
    // A 50 mL bottle at 20 °C; weights against air of 1.2 kg/m³.
    const volumeAt = (temperatureC: number) =>
      50 * (1 + sodaLimeGlassExpansionPerK * (temperatureC - 20));
    const contentsG = (density: number, temperatureC: number) =>
      ((density - 1.2) * volumeAt(temperatureC)) / 1000;
    const water = densityKgPerM3({ ethanolMassFraction: 0, temperatureC: 18 });
    const sample = densityKgPerM3({ ethanolMassFraction: 0.75, temperatureC: 26 });
    const measured = densityFromPycnometer({
      emptyG: 31.2,
      withWaterG: 31.2 + contentsG(water, 18),
      withSampleG: 31.2 + contentsG(sample, 26),
      waterTemperatureC: 18,
      sampleTemperatureC: 26,
      weighingUncertaintyG: 0.01,
    });
    // Three weighings of 10 mg in 50 g: √(1 + 0.86² + 0.14²) · 0.01/50 ≈ 2.6e-4.
    expect(measured).toEqual({
      densityKgPerM3: expect.closeTo(sample, 2),
      densityUncertaintyKgPerM3: expect.closeTo(0.26, 1),
    });
  });

  test('refuses weighings that cannot be, NaN included', () => {
    const good = {
      emptyG: 30,
      withWaterG: 80,
      withSampleG: 70,
      waterTemperatureC: 20,
      sampleTemperatureC: 20,
      weighingUncertaintyG: 0.01,
    };
    for (const bad of [
      { emptyG: Number.NaN },
      { withWaterG: 30 },
      { withSampleG: 20 },
      { waterTemperatureC: Number.NaN },
      { sampleTemperatureC: 50 },
      { weighingUncertaintyG: -1 },
    ]) {
      expect(() => densityFromPycnometer({ ...good, ...bad })).toThrow(OutOfRangeError);
    }
  });
});

test('a hydrometer reads its own scale at 20 °C and refuses NaN', () => {
  expect(densityFromHydrometer({ indicatedDensityKgPerM3: 1045, temperatureC: 20 })).toBe(1045);
  for (const [indicatedDensityKgPerM3, temperatureC] of [
    [Number.NaN, 20],
    [600, 20],
    [1000, Number.NaN],
  ] as const) {
    expect(() => densityFromHydrometer({ indicatedDensityKgPerM3, temperatureC })).toThrow(
      OutOfRangeError,
    );
  }
});
