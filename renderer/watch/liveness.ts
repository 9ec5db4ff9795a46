import type { Connection } from '../service/index.ts';
import type { RunView } from '../stores/index.ts';

/** Whether what is shown is so now: heard now, cut off from the service, over, or looked at again later. */
export type Liveness = 'live' | 'cut-off' | 'ended' | 'past';

/** A number that is not so now must never look as if it were. */
export function livenessOf(
  { origin, endedS }: Pick<RunView, 'origin' | 'endedS'>,
  connection: Connection,
): Liveness {
  if (origin !== 'live') return 'past';
  if (endedS !== null) return 'ended';
  return connection === 'open' ? 'live' : 'cut-off';
}
