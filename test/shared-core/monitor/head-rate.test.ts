import { describe, expect, test } from 'vitest';
import { createMonitor } from '#shared-core';
import { simulatedRun } from '../../support/simulated-run.ts';

describe('the rate of the head that is shown', () => {
  test('is none on the plateau, where it can’t be told from noise, and one once the head leaves it', () => {
    const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 3 });
    const monitor = createMonitor(settings, { forecasts: false });
    const plateau: number[] = [];
    const tail: number[] = [];
    for (const input of inputs) {
      const { timeS, stage, head, heat } = monitor.push(input);
      const rate = head?.rateKPerMin ?? Number.NaN;
      if (stage.stage === 'main-fraction' && timeS > 1200 && timeS < 2000) plateau.push(rate);
      if (stage.stage === 'tail' && heat !== 'off') tail.push(rate);
    }
    const told = plateau.filter((rate) => rate !== 0);
    expect(plateau.length).toBeGreaterThan(700);
    expect(told.length / plateau.length).toBeLessThan(0.05);
    expect(tail.length).toBeGreaterThan(5);
    expect(Math.min(...tail)).toBeGreaterThan(0.2);
  });
});
