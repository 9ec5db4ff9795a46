export { type AlarmBank, createAlarmBank, type StandingAlarm } from './alarm-bank.ts';
export { quietAlarmTrack } from './alarm-track.ts';
