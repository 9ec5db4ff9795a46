/** A probe compared with melting ice and boiling water, step by step. */
export { CalibrationWalk } from './calibration-walk.tsx';
