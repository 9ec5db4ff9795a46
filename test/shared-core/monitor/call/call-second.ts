import { type AlarmTrack, quietAlarmTrack } from '../../../../shared-core/alarms/alarm-track.ts';
import type { CallSecond } from '../../../../shared-core/monitor/call/alarm-definition.ts';
import type { MonitorFacts } from '../../../../shared-core/monitor/monitor-facts.ts';
import { factsOf } from '../words/facts.ts';

type Otherwise = Partial<Omit<CallSecond, 'facts' | 'track' | 'trackOf'>> & {
  readonly track?: Partial<AlarmTrack>;
  readonly others?: Readonly<Record<string, Partial<AlarmTrack>>>;
};

/** A second as a condition sees it: its alarm and all others quiet, nothing surging, but for what a test wants. */
export function callSecond(
  facts: MonitorFacts,
  { track, others = {}, ...rest }: Otherwise = {},
): CallSecond {
  return {
    surging: false,
    ...rest,
    facts,
    track: { ...quietAlarmTrack, ...track },
    trackOf: (id) => ({ ...quietAlarmTrack, ...others[id] }),
  };
}

/** Whether an alarm that stands goes on standing: by its probability of weak vapour, and how long none has come [s]. */
export function standsBy(
  condition: (second: CallSecond) => boolean,
  probability: 'passedOfLate' | 'passedWithinReaction',
): (value: number, absentS?: number) => boolean {
  return (value, absentS = 0) =>
    condition(
      callSecond(factsOf({}, { outlook: { [probability]: value }, situation: { absentS } }), {
        track: standing,
      }),
    );
}

/** The track of an alarm that stands, unanswered. */
export const standing: Partial<AlarmTrack> = { state: 'unacknowledged', active: true, raisedS: 1 };
