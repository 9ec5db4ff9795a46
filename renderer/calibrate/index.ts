export { CalibrationWalk } from './calibration-walk.tsx';
export type { ProbeCorrection } from './correction-from.ts';
