import type { DoubtfulRise } from '../doubtful-rise-watch.ts';
import type { MonitorFacts } from '../monitor-facts.ts';

/** The call stands for so long after the head has fallen back; so do its words [s]. */
const stillSaidS = 60;

/** The rise of a doubted head, while it is what the call is about: not once the limit is known to be passed. */
export function doubtfulRiseNow({ doubtfulRise, stage, timeS }: MonitorFacts): DoubtfulRise | null {
  if (doubtfulRise === null || stage === 'tail') return null;
  const { endedS } = doubtfulRise;
  return endedS === null || timeS - endedS < stillSaidS ? doubtfulRise : null;
}
