export { type Chime, createChime } from './chime.ts';
export { useAlarmSound } from './use-alarm-sound.ts';
