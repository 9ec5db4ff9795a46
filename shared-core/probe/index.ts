export {
  type CalibrationPoint,
  type CalibrationProblem,
  calibrateAtOnePoint,
  calibrateAtTwoPoints,
  calibrationLimits,
} from './calibrate.ts';
export { applyCalibration, type Calibration, type CorrectedTemperature } from './calibration.ts';
export {
  lagTimeConstantS,
  type Plunge,
  type PlungeProblem,
  rampLagK,
  t90FromPlunge,
} from './lag.ts';
export {
  type LagCorrected,
  type LagWindow,
  lagCorrectedTemperature,
  lagNoisePenalty,
} from './lag-correction.ts';
export { oneWireCrc8 } from './one-wire-crc8.ts';
export {
  type OneWireBits,
  oneWirePowerOnRaw,
  oneWireRaw,
  oneWireTemperatureC,
} from './one-wire-temperature.ts';
export { platinumResistanceOhm, platinumSlopeOhmPerK, platinumTemperatureC } from './platinum.ts';
export { type ProbeBudget, type ProbeBudgetComponent, probeBudget } from './probe-budget.ts';
export type { ProbeBudgetSetup } from './probe-budget-setup.ts';
export {
  readScratchpad,
  type ScratchpadProblem,
  type ScratchpadReading,
} from './read-scratchpad.ts';
export { icePoint, type ReferencePoint, steamPoint } from './reference-point.ts';
export type { TimedTemperature } from './regression-line.ts';
export {
  type PlatinumClass,
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
export {
  type ThermocoupleMeasurement,
  type ThermocoupleType,
  thermocoupleEmfMv,
  thermocoupleJunctionC,
  thermocoupleTemperatureC,
} from './thermocouple.ts';
