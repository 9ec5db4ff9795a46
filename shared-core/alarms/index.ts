/** Alarms as the standard has them: tracks, states, the bank that raises them. */
export { type AlarmBank, createAlarmBank, type StandingAlarm } from './alarm-bank.ts';
export { quietAlarmTrack } from './alarm-track.ts';
