/** Calibration, tolerance, lag and the physics of sensors. */
export { correctionAtPlateauK, correctionFrom } from './correction-from.ts';
export { lagTimeConstantS } from './lag.ts';
export { platinumTemperatureC } from './platinum.ts';
export { pressureFromSteam } from './pressure-from-steam.ts';
export { probeBudget } from './probe-budget.ts';
export { steamPoint } from './reference-point.ts';
export { scaleDoubts } from './scale-doubts.ts';
export {
  sensorStandardUncertaintyK,
  sensorToleranceK,
} from './sensor-tolerance.ts';
export { settledReading } from './settled-reading.ts';
