import type { AlarmOccurrence, AlarmReason } from '../alarms/index.ts';
import { type AlarmInput, type AlarmTrack, quietAlarmTrack, stepAlarm } from '../alarms/index.ts';
import { type Alarm, type AlarmRecord, type AlarmState, alarms } from '../snapshot/index.ts';
import { alarmCatalogue } from './call/index.ts';

/** An alarm that is not normal, with the reason it was raised for. */
export interface StandingAlarm {
  readonly alarm: Alarm;
  readonly track: AlarmTrack;
  readonly reason: AlarmReason;
}

/** A step in an alarm's life that the record keeps. */
export interface AlarmChange {
  readonly timeS: number;
  readonly record: AlarmRecord;
  readonly state: AlarmState;
  /** Raised, or come back unanswered: it calls. */
  readonly raised: boolean;
}

/** All alarms of a run: their tracks, their records in the order raised, and what just changed. */
export interface AlarmBank {
  /**
   * Follows a condition. `reason` is asked for only when the alarm is raised or stands again, and when what it stands
   * for (`occurrence`) has become something else meanwhile.
   */
  condition(
    alarm: Alarm,
    timeS: number,
    active: boolean,
    reason: () => AlarmReason,
    occurrence?: AlarmOccurrence | null,
  ): void;
  acknowledge(alarm: Alarm, timeS: number): void;
  /** Does nothing to an alarm that may not be put aside. */
  shelve(alarm: Alarm, timeS: number, untilS: number): void;
  isActive(alarm: Alarm): boolean;
  /** Where an alarm stands: its state and the times it was reached at. */
  trackOf(alarm: Alarm): AlarmTrack;
  /** High priority first, then the order they were raised in. */
  standing(): readonly StandingAlarm[];
  records(): readonly AlarmRecord[];
  takeChanges(): readonly AlarmChange[];
}

const noReason: AlarmReason = { because: '', wouldChangeIf: '' };

/** An empty bank: every alarm normal, no records. */
export function createAlarmBank(): AlarmBank {
  const tracks = new Map<Alarm, AlarmTrack>(alarms.map((alarm) => [alarm, quietAlarmTrack]));
  const reasons = new Map<Alarm, AlarmReason>();
  const occurrences = new Map<Alarm, string>();
  const openRecords = new Map<Alarm, number>();
  const records: AlarmRecord[] = [];
  let changes: AlarmChange[] = [];
  let standing: readonly StandingAlarm[] | null = [];

  const trackOf = (alarm: Alarm): AlarmTrack => tracks.get(alarm) ?? quietAlarmTrack;
  const reasonOf = (alarm: Alarm): AlarmReason => reasons.get(alarm) ?? noReason;

  const apply = (alarm: Alarm, input: AlarmInput, reason: () => AlarmReason): void => {
    const before = trackOf(alarm);
    const after = stepAlarm(before, input, alarmCatalogue[alarm]);
    if (after === before) return;
    tracks.set(alarm, after);
    const raised = after.raisedS !== before.raisedS;
    const cameBack =
      before.state === 'returned-unacknowledged' && after.state === 'unacknowledged' && !raised;
    if (raised) openRecords.set(alarm, records.length);
    if (raised || cameBack) reasons.set(alarm, reason());
    if (!raised && after.state === before.state && after.clearedS === before.clearedS) return;
    keepRecord(alarm, input.timeS, after, raised || cameBack);
  };

  const keepRecord = (alarm: Alarm, timeS: number, track: AlarmTrack, raised: boolean): void => {
    standing = null;
    const index = openRecords.get(alarm);
    if (index === undefined) return;
    const record: AlarmRecord = {
      alarm,
      priority: alarmCatalogue[alarm].priority,
      raisedS: track.raisedS ?? timeS,
      clearedS: track.clearedS,
      acknowledgedS: track.acknowledgedS,
      because: reasonOf(alarm).because,
    };
    records[index] = record;
    changes.push({ timeS, record, state: track.state, raised });
  };

  const follow: AlarmBank['condition'] = (alarm, timeS, active, reason, occurrence = null) => {
    const before = reasons.get(alarm);
    const isSameCause = occurrence?.isRepeat ?? false;
    apply(alarm, { kind: 'condition', timeS, active, isSameCause }, reason);
    if (occurrence === null || !trackOf(alarm).active) return;
    const isOther = occurrences.get(alarm) !== occurrence.key;
    occurrences.set(alarm, occurrence.key);
    if (!isOther || reasons.get(alarm) !== before) return;
    reasons.set(alarm, reason());
    keepRecord(alarm, timeS, trackOf(alarm), false);
  };

  return {
    condition: follow,
    acknowledge: (alarm, timeS) =>
      apply(alarm, { kind: 'acknowledge', timeS }, () => reasonOf(alarm)),
    shelve: (alarm, timeS, untilS) => {
      if (!alarmCatalogue[alarm].mayBeShelved) return;
      apply(alarm, { kind: 'shelve', timeS, untilS }, () => reasonOf(alarm));
    },
    isActive: (alarm) => trackOf(alarm).active,
    trackOf,
    standing: () => {
      standing ??= inOrderOfUrgency(tracks, reasonOf);
      return standing;
    },
    records: () => records.slice(),
    takeChanges: () => {
      const taken = changes;
      changes = [];
      return taken;
    },
  };
}

/** What is not normal: high priority first, then the order they were raised in. */
function inOrderOfUrgency(
  tracks: ReadonlyMap<Alarm, AlarmTrack>,
  reasonOf: (alarm: Alarm) => AlarmReason,
): readonly StandingAlarm[] {
  const urgency = ({ alarm }: StandingAlarm): number =>
    alarmCatalogue[alarm].priority === 'high' ? 0 : 1;
  return [...tracks]
    .filter(([, { state }]) => state !== 'normal')
    .map(([alarm, track]) => ({ alarm, track, reason: reasonOf(alarm) }))
    .sort((a, b) => urgency(a) - urgency(b) || (a.track.raisedS ?? 0) - (b.track.raisedS ?? 0));
}
