export {
  alarmCatalogue,
  alarmDefinitions,
  alarmsNamed,
  alarmTitles,
  isAlarm,
  mostUrgentFirst,
} from './alarm-catalogue.ts';
export type { AlarmDefinition, CallSecond } from './alarm-definition.ts';
export { isHeadUntrusted } from './fault-kinds.ts';
export { type RetiredAlarm, retiredAlarms } from './retired-alarms.ts';
