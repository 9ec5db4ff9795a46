/** A probe compared with melting ice and boiling water, step by step. */
export { CalibrationWalk } from './calibration-walk.tsx';
export { settlingWords } from './calibration-words.ts';
export type { SettledReading } from './settling.ts';
export { steamHow } from './steam-how.ts';
export { useSettling } from './use-settling.ts';
