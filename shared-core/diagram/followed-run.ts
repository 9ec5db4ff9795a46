import type { Mark, RunSettings } from '../run/index.ts';
import type { Series } from '../series/index.ts';
import type { Snapshot, Verdicts } from '../snapshot/index.ts';
import type { StageSpan } from '../stages/index.ts';

/** A run as far as somebody has followed it. */
export interface FollowedRun {
  readonly settings: RunSettings;
  /** What was read, by channel. */
  readonly tracks: Readonly<Record<string, { readonly series: Series }>>;
  readonly marks: readonly Mark[];
  readonly snapshot: Snapshot | null;
  readonly stages: readonly StageSpan[];
  /** Strengths as the monitor told them, minute by minute. */
  readonly estimates: Verdicts['estimates'];
}
