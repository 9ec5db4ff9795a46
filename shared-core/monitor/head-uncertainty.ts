import { lagTimeConstantS, probeBudget } from '../probe/index.ts';
import type { MonitorFacts } from './monitor-facts.ts';

/**
 * Expanded uncertainty (k = 2) [K] of the head reading as shown: the probe's budget over what the monitor knows,
 * the stated uncertainty, the noise it sees, and the lag, for which the shown reading is not corrected.
 */
export function headExpandedUncertaintyK(
  facts: Pick<MonitorFacts, 'settings' | 'noise' | 'head'>,
): number {
  const { standardUncertaintyK, lagT90S } = facts.settings.probe;
  return probeBudget({
    // Stated limits hold at any temperature; limits of √3 u are rectangular with the stated u.
    temperatureC: 80,
    sensor: { kind: 'stated', toleranceK: Math.sqrt(3) * standardUncertaintyK },
    resolutionK: 0,
    noiseK: facts.noise.whiteSdK,
    immersionK: 0,
    ...(facts.head !== null && {
      lag: {
        timeConstantS: lagTimeConstantS(lagT90S),
        slopeKPerS: facts.head.bulbRateKPerS,
        noisePenalty: null,
      },
    }),
  }).expandedUncertaintyK;
}
