/** The alarms: one file each, and the list that all names, orders and buttons follow from. */
export {
  alarmCatalogue,
  alarmDefinitions,
  alarmsNamed,
  alarmTitles,
  isAlarm,
  mostUrgentFirst,
} from './alarm-catalogue.ts';
export type { AlarmDefinition, CallSecond } from './alarm-definition.ts';
export { alarmList } from './alarm-list.ts';
export { isHeadUntrusted } from './fault-kinds.ts';
export { type RetiredAlarm, retiredAlarmNames, retiredAlarms } from './retired-alarms.ts';
