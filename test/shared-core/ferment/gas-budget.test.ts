import { describe, expect, test } from 'vitest';
import { degas, lostPerGasG, noGasYet, spendGas } from '../../../shared-core/ferment/gas-budget.ts';
import {
  dissolvedGasGPerL,
  ethanolCarriedGPerG,
  waterCarriedGPerG,
} from '../../../shared-core/ferment/mass-loss.ts';

describe('spendGas', () => {
  test('holds what the liquid can, lets the rest leave saturated, and loses none', () => {
    const budget = spendGas(noGasYet, 60, 20, 1000);
    const heldG = 1.12 * dissolvedGasGPerL(20);
    expect(budget.heldG).toBeCloseTo(heldG, 9);
    expect(budget.leftG + budget.heldG).toBeCloseTo(60, 9);
    expect(lostPerGasG(budget)).toBeCloseTo(
      1 + waterCarriedGPerG(20) + ethanolCarriedGPerG(6, 20),
      9,
    );
  });

  test('a cold night brings nothing back onto the balance, and a warm morning lets gas go', () => {
    const warm = spendGas(noGasYet, 60, 25, 1000);
    const night = spendGas(warm, 60, 10, 1000);
    expect(night).toEqual(warm);
    const morning = spendGas(night, 60, 30, 1000);
    expect(morning.heldG).toBeLessThan(warm.heldG);
    expect(morning.leftG + morning.heldG).toBeCloseTo(60, 9);
    // What left in the warm evening took along what it took along.
    expect(lostPerGasG(morning)).toBeGreaterThan(lostPerGasG(warm));
    expect(lostPerGasG(morning)).toBeLessThan(
      1 + waterCarriedGPerG(30) + ethanolCarriedGPerG(6, 30),
    );
  });

  test('once shaken out, the liquid holds only what is made after', () => {
    const shaken = degas(spendGas(noGasYet, 60, 20, 1000));
    expect(shaken).toMatchObject({ heldG: 0, leftG: 60 });
    expect(spendGas(shaken, 60.5, 20, 1000).heldG).toBeCloseTo(0.5, 9);
  });

  test('a belief that takes gas back does not make it twice', () => {
    const before = spendGas(noGasYet, 60, 20, 1000);
    expect(spendGas(spendGas(before, 55, 20, 1000), 60, 20, 1000)).toEqual(before);
  });
});
