import { describe, expect, test } from 'vitest';
import { azeotrope, createRandom, pearFermentSetup, simulateBatch } from '#shared-core';
import type { BatchEvent } from '../../../shared-core/column/batch-event.ts';
import type { BatchSetup } from '../../../shared-core/column/batch-setup.ts';
import { saturationTemperatureC } from '../../../shared-core/equilibrium/saturation-temperature.ts';
import type { Random } from '../../../shared-core/random/create-random.ts';

const { rig } = pearFermentSetup();

/** A rig, charge, pressure and course of events from the range that classes meet. */
function anySetup(random: Random): BatchSetup {
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  const schedule: BatchEvent[] = [{ timeS: 0, kind: 'heat-on', powerW: between(60, 250) }];
  let timeS = between(500, 1500);
  for (let count = random.integer(0, 4); count > 0; count--) {
    schedule.push({ timeS, kind: 'heat-removed' });
    timeS += between(20, 120);
    schedule.push({ timeS, kind: 'heat-returned' });
    schedule.push({ timeS, kind: 'heat-eased', powerW: between(30, 150) });
    schedule.push({
      timeS,
      kind: 'draught',
      durationS: between(10, 200),
      lossFactor: between(0, 4),
    });
    schedule.push({ timeS, kind: 'reflux-set', returnedFraction: between(0, 1) });
    schedule.push({ timeS, kind: 'surging', durationS: 60, depth: between(0, 1), periodS: 12 });
    timeS += between(100, 900);
  }
  const start = between(70, 104);
  return {
    charge: { volumeMl: between(100, 400), strengthAbv: between(0, 40) },
    rig: {
      ...rig,
      plates: between(0, 12),
      column: {
        heatCapacityJPerK: between(5, 300),
        lossWPerK: between(0, 1),
        holdUpMl: between(0.1, 25),
        drainS: between(1, 40),
      },
      head: { ...rig.head, filmWPerK: between(0.5, 10), heatCapacityJPerK: between(3, 60) },
      bulb: { wetT90S: between(0.5, 30), dryT90S: between(10, 200) },
    },
    pressureKPa: [
      { timeS: 0, pressureKPa: start },
      { timeS: 5000, pressureKPa: start + between(-1, 1) },
    ],
    schedule,
    stepS: random.uniform() < 0.5 ? 0.5 : 2,
  };
}

describe('random rigs, charges and events', () => {
  test('40 runs keep ethanol, water and heat to 1e-6 and never leave the physical range', () => {
    const random = createRandom('rigs');
    for (let index = 0; index < 40; index++) {
      const setup = anySetup(random);
      const { samples, ledgerAtStart, ledgerAtEnd } = simulateBatch(setup, {
        durationS: 5400,
        sampleEveryS: 20,
      });
      const { storedJ, lostJ, coolingWaterJ, distillateJ, heatInJ } = ledgerAtEnd;
      const residualJ =
        storedJ - ledgerAtStart.storedJ + lostJ + coolingWaterJ + distillateJ - heatInJ;
      expect(Math.abs(residualJ / heatInJ)).toBeLessThan(1e-6);
      expect(Math.abs(ledgerAtEnd.waterMol / ledgerAtStart.waterMol - 1)).toBeLessThan(1e-6);
      expect(Math.abs(ledgerAtEnd.ethanolMol - ledgerAtStart.ethanolMol)).toBeLessThan(
        1e-6 * ledgerAtStart.ethanolMol + 1e-15,
      );
      let collectedMl = 0;
      // Counted, not asserted one by one: 10 000 assertions would take longer than the runs.
      const wrong = samples.filter((sample) => {
        const shrank = sample.distillateVolumeMl < collectedMl - 1e-9;
        collectedMl = sample.distillateVolumeMl;
        if (shrank || sample.bathedFraction < 0.99999) return shrank;
        const { pressureKPa, headVapourTemperatureC: headC } = sample;
        const isAbove = headC > azeotrope(pressureKPa).temperatureC - 0.02;
        return !isAbove || !(headC < saturationTemperatureC('water', pressureKPa) + 0.02);
      });
      expect(wrong).toEqual([]);
    }
  });
});
