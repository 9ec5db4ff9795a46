import type { PlateauBand } from '../../snapshot/index.ts';
import { weightedQuantiles } from '../../uncertainty/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';

type ScaleFinding = Pick<PlateauBand, 'probeReadsHighK' | 'probeReadsHighRangeK'>;

/**
 * How far the probe is told to be off. Before vapour nothing in the run speaks of it: what is feared of bulbs in general would
 * be told as if it had been found on this one. It is a finding only once the head has held somewhere.
 */
export function scaleFinding({ bias, situation, stage }: MonitorFacts): ScaleFinding {
  if (stage === 'warm-up') return { probeReadsHighK: 0, probeReadsHighRangeK: null };
  const { meanK, offsetsK, weights } = bias;
  if (situation.lowestLevelC === null)
    return { probeReadsHighK: meanK, probeReadsHighRangeK: null };
  const [low = meanK, high = meanK] = weightedQuantiles(offsetsK, weights, [0.025, 0.975]);
  return { probeReadsHighK: meanK, probeReadsHighRangeK: { low, high } };
}
