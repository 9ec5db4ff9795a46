import { pointAt, type Snapshot } from '#shared-core';
import type { RunView } from '../stores/index.ts';
import type { Liveness } from './liveness.ts';

/** The head as it is shown. Without an uncertainty nothing has judged it: it is what the probe sent. */
export type ShownHead = Pick<
  NonNullable<Snapshot['head']>,
  'temperatureC' | 'rateKPerMin' | 'ageS'
> & {
  readonly expandedUncertaintyK: number | null;
};

/** The head as judged, or, where nothing judges it any more, the last reading as it came; null while none comes. */
export function headNow(
  { snapshot, tracks, gaps, lastInputS }: RunView,
  liveness: Liveness,
): ShownHead | null {
  if (liveness !== 'unjudged') return snapshot?.head ?? null;
  const last = tracks.head && pointAt(tracks.head.series, -1);
  const isSilent = gaps.at(-1)?.toS === null;
  if (!last || isSilent) return null;
  const ageS = lastInputS - last.timeS;
  return { temperatureC: last.value, expandedUncertaintyK: null, rateKPerMin: null, ageS };
}
