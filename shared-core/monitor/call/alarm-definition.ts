import type {
  AlarmDelays,
  AlarmOccurrence,
  AlarmPriority,
  AlarmReason,
  AlarmState,
  AlarmTrack,
} from '../../alarms/index.ts';
import type { CautionId } from '../../cautions/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';

/** What a condition may look at: one second's facts, and where this alarm and the others stand. */
export interface CallSecond {
  readonly facts: MonitorFacts;
  readonly surging: boolean;
  readonly track: AlarmTrack;
  readonly trackOf: (id: string) => AlarmTrack;
}

/**
 * Everything there is to say of one alarm, in one file; `alarm-list.ts` puts it in its place among the others. Delays are
 * chosen so that one odd second never calls: the facts are filtered already, so they stay short where time is product.
 */
export interface AlarmDefinition<Id extends string = string> extends AlarmDelays {
  readonly id: Id;
  /** Its name in lists, tables and reports. */
  readonly title: string;
  /** What to do, short enough for the line at the top. */
  readonly act: string;
  /** Said with the act in the prompt, where there is room: how it is done without being hurt. */
  readonly caution: CautionId | null;
  /** What happens otherwise. */
  readonly consequence: string;
  readonly priority: AlarmPriority;
  /** Taking the heat off is one press away wherever it is read. */
  readonly asksForHeatOff: boolean;
  /** A heat-off marked elsewhere answers it: nothing of its act is left to do. */
  readonly isAnsweredByHeatOff: boolean;
  /** False where nobody may put it aside. */
  readonly mayBeShelved: boolean;
  /** Hangs on the head alone: it is not followed while the head's own readings are not trusted and the heat may be on. */
  readonly waitsForHead: boolean;
  /** Its sentence outlasts a short break of its condition; otherwise it goes as soon as that ends. */
  readonly lingers: boolean;
  readonly condition: (second: CallSecond) => boolean;
  /** Where it stands for several things in turn: what it stands for now; null while for none. */
  readonly occurrence?: (facts: MonitorFacts) => AlarmOccurrence | null;
  /** The numbers behind it at the moment it is raised, and what would take it back. */
  readonly reason: (facts: MonitorFacts) => AlarmReason;
  /** What the one sentence at the top says of it. */
  readonly sentence: (facts: MonitorFacts) => string;
  /** Whether that sentence is its own while it stands; left out where it always is. */
  readonly speaks?: (facts: MonitorFacts, state: AlarmState) => boolean;
}
