import { describe, expect, test } from 'vitest';
import { createMonitor } from '#shared-core';
import { simulatedRun } from '../../support/simulated-run.ts';

describe('the rate of the head that is shown', () => {
  test('is none on the plateau, where it can’t be told from noise, and one once the head leaves it', () => {
    const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 3 });
    const monitor = createMonitor(settings, { forecasts: false });
    const plateau: number[] = [];
    const leaving: number[] = [];
    for (const input of inputs) {
      const { timeS, stage, head, heat, alarms } = monitor.push(input);
      const rate = head?.rateKPerMin ?? Number.NaN;
      if (stage.stage === 'main-fraction' && timeS > 1200 && timeS < 2000) plateau.push(rate);
      const isCalled = alarms.some(({ alarm }) => alarm === 'plateau-departure');
      if (isCalled && heat !== 'off') leaving.push(rate);
    }
    const told = plateau.filter((rate) => rate !== 0);
    expect(plateau.length).toBeGreaterThan(700);
    expect(told.length / plateau.length).toBeLessThan(0.05);
    expect(leaving.length).toBeGreaterThan(5);
    expect(Math.min(...leaving)).toBeGreaterThan(0.2);
  });

  test('is never none beside the sentence that the plateau is ending', () => {
    const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 3 });
    const monitor = createMonitor(settings, { forecasts: false });
    const ending = inputs.flatMap((input) => {
      const { sentence, head } = monitor.push(input);
      return sentence.startsWith('The plateau is ending') ? [head?.rateKPerMin] : [];
    });
    expect(ending.length).toBeGreaterThan(300);
    expect(ending.filter((rate) => rate === 0)).toEqual([]);
  });

  test('is not called none while the head sinks after the heat came off', () => {
    const { settings, inputs } = simulatedRun({ name: 'pear', pressureKPa: 99.4, seed: 3 });
    const monitor = createMonitor(settings, { forecasts: false });
    const heads: {
      readonly timeS: number;
      readonly headC: number;
      readonly rate: number | null;
    }[] = [];
    let offS = Number.POSITIVE_INFINITY;
    for (const input of inputs) {
      const { timeS, head, heat } = monitor.push(input);
      if (heat === 'off') offS = Math.min(offS, timeS);
      if (timeS < offS || head === null) continue;
      heads.push({ timeS, headC: head.temperatureC, rate: head.rateKPerMin });
    }
    const calledSteady = heads.filter(({ rate }) => rate === 0);
    const moved = calledSteady.map(({ timeS, headC }) => {
      const before = heads.findLast((other) => other.timeS <= timeS - 30);
      return before === undefined ? 0 : Math.abs(before.headC - headC);
    });
    expect(heads.length).toBeGreaterThan(300);
    expect(moved.filter((kelvin) => kelvin > 1)).toEqual([]);
  });
});
