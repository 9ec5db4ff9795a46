import { useBench } from '../parts/index.ts';
import type { BenchState, RunView } from '../stores/index.ts';

/**
 * Whether what is shown is so now: heard now and judged, heard but judged by nobody because the monitor failed, cut off
 * from the service, over, or looked at again later.
 */
export type Liveness = 'live' | 'unjudged' | 'cut-off' | 'ended' | 'past';

/** A number that is not so now must never look as if it were. */
export function livenessOf(
  { origin, endedS }: Pick<RunView, 'origin' | 'endedS'>,
  { connection, recording }: Pick<BenchState, 'connection' | 'recording'>,
): Liveness {
  if (origin !== 'live') return 'past';
  if (endedS !== null) return 'ended';
  if (connection !== 'open') return 'cut-off';
  return recording?.adviceStopped === undefined ? 'live' : 'unjudged';
}

/** How what is shown of this run stands now. */
export function useLiveness(view: RunView): Liveness {
  const connection = useBench((bench) => bench.connection);
  const recording = useBench((bench) => bench.recording);
  return livenessOf(view, { connection, recording });
}
