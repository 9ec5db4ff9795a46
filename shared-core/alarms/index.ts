/** One alarm as the standard has it: its states, and how it moves through them. */
export type { AlarmOccurrence, AlarmReason } from './alarm-reason.ts';
export {
  type AlarmPriority,
  type AlarmState,
  alarmPriorities,
  alarmStates,
} from './alarm-state.ts';
export {
  type AlarmDelays,
  type AlarmInput,
  type AlarmTrack,
  quietAlarmTrack,
  stepAlarm,
} from './alarm-track.ts';
