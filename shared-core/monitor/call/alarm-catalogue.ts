import type { AlarmDefinition } from './alarm-definition.ts';
import { type AlarmId, alarmList } from './alarm-list.ts';
import { type RetiredAlarm, retiredAlarmNames, retiredAlarms } from './retired-alarms.ts';

/** The same list, whatever each alarm leaves out. */
export const alarmDefinitions: readonly AlarmDefinition<AlarmId>[] = alarmList;

/** Every alarm by its name. */
export const alarmCatalogue = Object.fromEntries(
  alarmDefinitions.map((definition) => [definition.id, definition]),
) as Readonly<Record<AlarmId, AlarmDefinition<AlarmId>>>;

/** Most urgent first. The sentence and the prompts both keep to it. */
export const mostUrgentFirst: readonly AlarmId[] = alarmDefinitions.map(({ id }) => id);

/** Short names of the prompts, for lists; of those in old records, too. */
export const alarmTitles = Object.fromEntries([
  ...alarmDefinitions.map(({ id, title }) => [id, title]),
  ...retiredAlarmNames.map((name) => [name, retiredAlarms[name].title]),
]) as Readonly<Record<AlarmId | RetiredAlarm, string>>;

export function isAlarm(name: string): name is AlarmId {
  return Object.hasOwn(alarmCatalogue, name);
}

/** The alarms that a mark names: who answered an alarm that has since become several has answered each. */
export function alarmsNamed(name: string): readonly AlarmId[] {
  if (isAlarm(name)) return [name];
  const retired = retiredAlarmNames.find((known) => known === name);
  return retired === undefined ? [] : retiredAlarms[retired].became;
}
