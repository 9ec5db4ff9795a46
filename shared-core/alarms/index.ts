export {
  type AlarmBank,
  type AlarmChange,
  createAlarmBank,
  type StandingAlarm,
} from './alarm-bank.ts';
export type { AlarmOccurrence, AlarmReason } from './alarm-reason.ts';
export {
  type AlarmDelays,
  type AlarmInput,
  type AlarmTrack,
  alarmTransitions,
  quietAlarmTrack,
  stepAlarm,
} from './alarm-track.ts';
