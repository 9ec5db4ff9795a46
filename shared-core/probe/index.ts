export { oneWireCrc8 } from './one-wire-crc8.ts';
export {
  type OneWireBits,
  oneWirePowerOnRaw,
  oneWireRaw,
  oneWireTemperatureC,
} from './one-wire-temperature.ts';
export { platinumResistanceOhm, platinumSlopeOhmPerK, platinumTemperatureC } from './platinum.ts';
export {
  readScratchpad,
  type ScratchpadProblem,
  type ScratchpadReading,
} from './read-scratchpad.ts';
export { type PlatinumClass, type SensorKind, sensorToleranceK } from './sensor-tolerance.ts';
export {
  type ThermocoupleMeasurement,
  type ThermocoupleType,
  thermocoupleEmfMv,
  thermocoupleJunctionC,
  thermocoupleTemperatureC,
} from './thermocouple.ts';
