export {
  type AlarmBank,
  type AlarmChange,
  type AlarmReason,
  createAlarmBank,
  type StandingAlarm,
} from './alarm-bank.ts';
export { type AlarmDefinition, alarmCatalogue } from './alarm-catalogue.ts';
export {
  type AlarmDelays,
  type AlarmInput,
  type AlarmTrack,
  alarmTransitions,
  quietAlarmTrack,
  stepAlarm,
} from './alarm-track.ts';
export { mostUrgentFirst } from './most-urgent-first.ts';
