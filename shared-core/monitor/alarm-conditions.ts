import { quietAlarmTrack } from '../alarms/index.ts';
import type { AlarmBank } from './alarm-bank.ts';
import { alarmDefinitions, isAlarm, isHeadUntrusted } from './call/index.ts';
import type { MonitorFacts } from './monitor-facts.ts';

/** Brings every alarm's condition up to date with the facts of a second. */
export type FollowAlarmConditions = (facts: MonitorFacts, surging: boolean) => void;

export function createAlarmConditions(bank: AlarmBank): FollowAlarmConditions {
  const trackOf = (id: string) => (isAlarm(id) ? bank.trackOf(id) : quietAlarmTrack);
  return (facts, surging) => {
    const isUntrusted = isHeadUntrusted(facts);
    for (const { id, condition, occurrence, reason, waitsForHead } of alarmDefinitions) {
      if (waitsForHead && isUntrusted) continue;
      const active = condition({ facts, surging, track: bank.trackOf(id), trackOf });
      bank.condition(id, facts.timeS, active, () => reason(facts), occurrence?.(facts));
    }
  };
}
