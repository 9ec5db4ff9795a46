import type { Snapshot } from '#shared-core';
import { newestHead, type RunView } from '../stores/index.ts';
import type { Liveness } from './liveness.ts';

/** The head as it is shown. Without an uncertainty nothing has judged it: it is what the probe sent. */
export type ShownHead = Pick<
  NonNullable<Snapshot['head']>,
  'temperatureC' | 'rateKPerMin' | 'ageS'
> & {
  readonly expandedUncertaintyK: number | null;
};

/** The head as judged, or, where nothing judges it any more, the last reading as it came; null while none comes. */
export function headNow(view: RunView, liveness: Liveness): ShownHead | null {
  if (liveness !== 'unjudged') return view.snapshot?.head ?? null;
  const newest = newestHead(view);
  if (newest === null) return null;
  const ageS = view.lastInputS - newest.timeS;
  return { temperatureC: newest.value, expandedUncertaintyK: null, rateKPerMin: null, ageS };
}
