import { limitTemperatureC } from '../../../../shared-core/equilibrium/limit-temperature.ts';
import type { MonitorFacts } from '../../../../shared-core/monitor/monitor-facts.ts';
import { priorScale } from '../../../../shared-core/monitor/situation/scale-belief.ts';
import { createVapourScale } from '../../../../shared-core/monitor/situation/vapour-scale.ts';
import { barometerSettings } from '../support.ts';

type Parts = {
  readonly [K in 'head' | 'situation' | 'outlook']?: Partial<NonNullable<MonitorFacts[K]>>;
};

/** At 98.6 kPa the azeotrope boils at 77.5 °C and vapour of 80 % vol condenses at 82.8 °C. */
export const limitC = limitTemperatureC({ leastStrengthAbv: 80, pressureKPa: 98.6 });
const scale = createVapourScale(98.6, 80);

/** A quiet main fraction at 78.2 °C after half an hour, with what a test wants otherwise. */
export function factsOf(
  changes: Partial<Omit<MonitorFacts, keyof Parts>> = {},
  parts: Parts = {},
): MonitorFacts {
  return {
    settings: barometerSettings,
    timeS: 1800,
    stage: 'main-fraction',
    stageSinceS: 1200,
    probability: 0.99,
    condition: null,
    noise: { whiteSdK: 0.04, slowSdK: 0.04 },
    scale,
    limitAbv: 80,
    bias: priorScale(barometerSettings, scale),
    overLimitPatienceS: 45,
    firstFraction: { over: true, done: 5.2, wanted: 5, unit: 'mL', estimated: false },
    fault: null,
    faultSinceS: 0,
    dropouts: { count: 0, sinceS: 0 },
    doubt: null,
    lastTrustedC: 78.2,
    potC: null,
    condenserC: null,
    heat: 'on',
    heatChangedS: null,
    attentionDueS: null,
    forecast: null,
    ...changes,
    head: {
      vapourC: 78.2,
      vapourSdK: 0.04,
      rateKPerS: 0,
      rateSdKPerS: 0.0005,
      bulbC: 78.2,
      bulbRateKPerS: 0,
      wet: 0.99,
      ...parts.head,
    },
    situation: {
      arrivedS: 900,
      bathedS: 910,
      heldS: 960,
      levelC: 78.2,
      lowestLevelC: 78.1,
      lowestLaterC: 78.1,
      recededSinceS: null,
      absentS: 0,
      leftAloneS: 0,
      longestBreakS: 0,
      wetS: 890,
      heldWetS: 840,
      calmS: 840,
      departedS: null,
      ...parts.situation,
    },
    outlook: {
      limitOnProbeC: limitC,
      passed: 0.001,
      passedOfLate: 0.001,
      passedWithinReaction: 0.001,
      strongForS: 800,
      weakForS: 0,
      etaS: null,
      heatOffDue: false,
      ...parts.outlook,
    },
  };
}

/** A head at one temperature, bulb and vapour alike. */
export function headAt(temperatureC: number, rateKPerS = 0) {
  return { vapourC: temperatureC, bulbC: temperatureC, rateKPerS };
}
