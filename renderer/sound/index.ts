export { useAlarmSound } from '../window/use-alarm-sound.ts';
export { type Chime, createChime } from './chime.ts';
