import { describe, expect, test } from 'vitest';
import { headVapour } from '#shared-core';
import type { BelowAzeotropeClues } from '../../../shared-core/equilibrium/below-azeotrope.ts';

/** The cause ranked first for a reading `shortfallK` below the azeotrope at 101.325 kPa (78.14 °C). */
function firstCause(shortfallK: number, clues: BelowAzeotropeClues): string | undefined {
  const vapour = headVapour({
    temperatureC: 78.14 - shortfallK,
    pressureKPa: 101.325,
    temperatureUncertaintyK: 0.1,
    pressureUncertaintyKPa: 0.2,
    clues,
  });
  return vapour.explanations[0]?.cause;
}

describe('explanations of a reading below the azeotrope', () => {
  test('name the cause that the clues point to', () => {
    expect({
      farBelowJustAfterVapour: firstCause(8, { minutesSinceVapour: 1, rateKPerMin: 0.2 }),
      slowProbeOnARamp: firstCause(1.5, {
        rateKPerMin: 6,
        responseTime90S: 40,
        minutesSinceVapour: 6,
        pressureSource: 'channel',
        calibrated: true,
      }),
      pressureNobodyMeasured: firstCause(1, {
        minutesSinceVapour: 20,
        pressureSource: 'assumed',
        calibrated: true,
        distillateSeen: true,
      }),
      uncheckedProbe: firstCause(0.6, {
        minutesSinceVapour: 20,
        pressureSource: 'channel',
        calibrated: false,
        distillateSeen: true,
      }),
    }).toEqual({
      farBelowJustAfterVapour: 'bulb-not-bathed',
      slowProbeOnARamp: 'probe-lag',
      pressureNobodyMeasured: 'wrong-pressure',
      uncheckedProbe: 'calibration',
    });
  });

  test('weigh all five causes, most likely first, and say how large each would have to be', () => {
    const { explanations, kind } = headVapour({
      temperatureC: 75,
      pressureKPa: 101.325,
      temperatureUncertaintyK: 0.1,
      pressureUncertaintyKPa: 0.2,
    });
    expect(kind).toBe('below-azeotrope');
    expect(new Set(explanations.map(({ cause }) => cause)).size).toBe(5);
    const weights = explanations.map(({ weight }) => weight);
    expect(weights).toEqual([...weights].sort((a, b) => b - a));
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    const pressure = explanations.find(({ cause }) => cause === 'wrong-pressure');
    // 3.14 K at some 4 kPa/K.
    expect(pressure?.reason).toContain('12.');
  });

  test('are not given for a reading that ethanol–water vapour can explain', () => {
    const { explanations } = headVapour({
      temperatureC: 78.0,
      pressureKPa: 101.325,
      temperatureUncertaintyK: 0.2,
      pressureUncertaintyKPa: 0.2,
    });
    expect(explanations).toEqual([]);
  });
});
