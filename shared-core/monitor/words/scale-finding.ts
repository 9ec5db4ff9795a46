import type { PlateauBand } from '../../snapshot/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import type { ScaleBelief } from '../situation/scale-belief.ts';

type ScaleFinding = Pick<PlateauBand, 'probeReadsHighK' | 'probeReadsHighRangeK'>;

/**
 * How far the probe is told to be off. Before vapour nothing in the run speaks of it: what is feared of bulbs in general would
 * be told as if it had been found on this one. It is a finding only once the head has held somewhere.
 */
export function scaleFinding({ bias, situation, stage }: MonitorFacts): ScaleFinding {
  if (stage === 'warm-up') return { probeReadsHighK: 0, probeReadsHighRangeK: null };
  return {
    probeReadsHighK: bias.meanK,
    probeReadsHighRangeK:
      situation.lowestLevelC === null
        ? null
        : { low: quantileK(bias, 0.025), high: quantileK(bias, 0.975) },
  };
}

function quantileK({ offsetsK, weights }: ScaleBelief, probability: number): number {
  let sum = 0;
  const reached = weights.findIndex((weight) => {
    sum += weight;
    return sum >= probability;
  });
  return offsetsK.at(reached) ?? 0;
}
