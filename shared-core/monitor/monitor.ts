import type { RunInput } from '../run/index.ts';
import type { AlarmRecord, AlarmState, RunEvent, Snapshot, Verdicts } from '../snapshot/index.ts';
import type { StageSpan } from '../stages/index.ts';

/** What changed in the verdicts since they were last taken; the recorder logs each one. */
export type MonitorChange =
  | { readonly kind: 'stage-entered'; readonly timeS: number; readonly span: StageSpan }
  | {
      readonly kind: 'alarm-changed';
      readonly timeS: number;
      readonly record: AlarmRecord;
      readonly state: AlarmState;
      /** The snapshot behind a newly raised alarm; null on later changes. */
      readonly snapshot: Snapshot | null;
    }
  | { readonly kind: 'event'; readonly timeS: number; readonly event: RunEvent };

/**
 * A deterministic function of settings and inputs: no clock, no randomness of its own, so a replay
 * gives the same bytes as the live run.
 *
 * Time passes only through inputs and `advanceTo`; both run the whole-second ticks they step over,
 * so silence is noticed at the same second live and in replay.
 */
export interface Monitor {
  push(input: RunInput): Snapshot;
  advanceTo(timeS: number): Snapshot;
  snapshot(): Snapshot;
  verdicts(): Verdicts;
  /** The verdicts' own, at no cost: the same list as long as none is added. */
  estimates(): Verdicts['estimates'];
  takeChanges(): readonly MonitorChange[];
}
