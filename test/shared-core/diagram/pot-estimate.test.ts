import { describe, expect, test } from 'vitest';
import { bubblePoint } from '#shared-core';
import type { PotClues } from '../../../shared-core/diagram/pot-estimate.ts';
import { potEstimate } from '../../../shared-core/diagram/pot-estimate.ts';

const clues: PotClues = {
  charge: { volumeMl: 350, strengthAbv: 9, standardUncertaintyAbv: 0.5 },
  pressureKPa: 101.325,
  potTemperatureC: null,
  probeStandardUncertaintyK: 0.25,
  balanceAbv: null,
  hasDistilled: false,
};

describe('potEstimate', () => {
  test('before anything has come over the pot is the charge, boiling at its bubble point', () => {
    const pot = potEstimate(clues);
    expect(pot?.basis).toBe('as-charged');
    expect(pot?.strengthAbv).toEqual({ value: 9, low: 8, high: 10 });
    const boils = bubblePoint({
      ethanolMoleFraction: pot?.ethanolMoleFraction.value ?? 0,
      pressureKPa: 101.325,
    });
    expect(pot?.boilsAtC.value).toBe(boils.temperatureC);
    expect(pot?.boilsAtC.low).toBeLessThan(boils.temperatureC);
  });

  test('a pot probe counts only once the pot boils', () => {
    const cold = potEstimate({ ...clues, potTemperatureC: 60 });
    const boiling = potEstimate({ ...clues, potTemperatureC: 95.2, hasDistilled: true });
    expect([cold?.basis, cold?.isBoiling]).toEqual(['as-charged', false]);
    expect([boiling?.basis, boiling?.isBoiling]).toEqual(['pot-probe', true]);
    expect(boiling?.strengthAbv.value).toBeGreaterThan(3);
    expect(boiling?.strengthAbv.value).toBeLessThan(9);
    expect(boiling?.strengthAbv.low).toBeLessThan(boiling?.strengthAbv.value ?? 0);
  });

  test('a pot that has fallen below the boiling point of its charge tells nothing of its strength', () => {
    expect(potEstimate({ ...clues, potTemperatureC: 85, hasDistilled: true })).toBe(null);
  });

  test('without a probe the balance tells; with neither the pot is unknown once vapour is over', () => {
    const balanceAbv = { value: 5, low: 4, high: 6.5 };
    const balanced = potEstimate({ ...clues, balanceAbv, hasDistilled: true });
    expect([balanced?.basis, balanced?.strengthAbv]).toEqual(['balance', balanceAbv]);
    expect(potEstimate({ ...clues, hasDistilled: true })).toBe(null);
  });

  test('a pot hotter than boiling water is water, not an error', () => {
    const pot = potEstimate({ ...clues, potTemperatureC: 149.9, hasDistilled: true });
    expect(pot?.ethanolMoleFraction).toEqual({ value: 0, low: 0, high: 0 });
  });
});
