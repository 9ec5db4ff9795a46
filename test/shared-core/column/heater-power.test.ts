import { describe, expect, test } from 'vitest';
import { createBatchSimulation, OutOfRangeError, pearFermentSetup } from '#shared-core';
import type { BatchState } from '../../../shared-core/column/batch-state.ts';
import {
  heaterPowerForDripRateW,
  heaterPowerForRefluxW,
} from '../../../shared-core/column/heater-power.ts';
import type { Rig } from '../../../shared-core/column/rig.ts';

const pear = pearFermentSetup();

function whileCollecting(rig: Rig, powerW: number): BatchState {
  const still = createBatchSimulation({
    ...pear,
    // Plenty in the pot, so that it hardly changes while the column settles.
    charge: { volumeMl: 3000, strengthAbv: 10, temperatureC: 70 },
    rig,
    schedule: [{ timeS: 0, kind: 'heat-on', powerW: 400 }],
  });
  let timeS = 0;
  while (still.state.boilUpMolPerS === 0) {
    timeS += 10;
    still.advance(timeS);
  }
  still.applyEvent({ kind: 'heat-eased', powerW });
  still.advance(timeS + 1800);
  return still.state;
}

describe('heater power', () => {
  test.each([2, 3, 5])('for a reflux ratio of %d gives it within a fifth', (refluxRatio) => {
    const { refluxRatio: found } = whileCollecting(
      pear.rig,
      heaterPowerForRefluxW(pear.rig, refluxRatio, 20),
    );
    expect((found ?? 0) / refluxRatio).toBeGreaterThan(0.8);
    expect((found ?? 0) / refluxRatio).toBeLessThan(1.2);
  });

  test('for a drip rate gives it within a sixth, also with condensate led back', () => {
    for (const returnedFraction of [0, 0.5]) {
      const rig = { ...pear.rig, returnedFraction };
      const { distillateRateMlPerMin } = whileCollecting(rig, heaterPowerForDripRateW(rig, 1, 20));
      expect(Math.abs(distillateRateMlPerMin - 1)).toBeLessThan(1 / 6);
    }
  });

  test('a reflux ratio below what the divider sends back is refused', () => {
    expect(() => heaterPowerForRefluxW({ ...pear.rig, returnedFraction: 0.5 }, 1, 20)).toThrow(
      OutOfRangeError,
    );
  });
});
