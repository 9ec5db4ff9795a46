/** Calibration, tolerance, lag and the physics of sensors. */
export { type CalibrationProblem, calibrationLimits } from './calibrate.ts';

export { correctionAtPlateauK, correctionFrom, type ProbeCorrection } from './correction-from.ts';
export { lagTimeConstantS } from './lag.ts';
export { platinumTemperatureC } from './platinum.ts';
export { probeBudget } from './probe-budget.ts';
export { steamPoint } from './reference-point.ts';
export type { TimedTemperature } from './regression-line.ts';
export {
  type SensorKind,
  sensorStandardUncertaintyK,
  sensorToleranceK,
} from './sensor-tolerance.ts';
export {
  type SettledReading,
  settledLimits,
  settledReading,
  type UnsettledProblem,
} from './settled-reading.ts';
