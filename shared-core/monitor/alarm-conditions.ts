import { quietAlarmTrack } from '../alarms/index.ts';
import type { AlarmBank } from './alarm-bank.ts';
import { alarmDefinitions, isAlarm, isHeadUntrusted } from './call/index.ts';
import type { MonitorFacts } from './monitor-facts.ts';

/** Brings every alarm's condition up to date with the facts of this second. */
export function followAlarmConditions(
  bank: AlarmBank,
  facts: MonitorFacts,
  surging: boolean,
): void {
  const isUntrusted = isHeadUntrusted(facts);
  const trackOf = (id: string) => (isAlarm(id) ? bank.trackOf(id) : quietAlarmTrack);
  for (const { id, condition, occurrence, reason, waitsForHead } of alarmDefinitions) {
    if (waitsForHead && isUntrusted) continue;
    const active = condition({ facts, surging, track: bank.trackOf(id), trackOf });
    bank.condition(id, facts.timeS, active, () => reason(facts), occurrence?.(facts));
  }
}
