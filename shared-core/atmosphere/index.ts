export {
  type BarometerEntry,
  type BarometerJudgement,
  judgeBarometerEntry,
} from './judge-barometer-entry.ts';
export type { PressureEvidence, StationPressure } from './pressure-evidence.ts';
export {
  type SeaLevelReport,
  type StationReport,
  seaLevelPressureFromStationKPa,
  stationPressureFromSeaLevelKPa,
} from './sea-level-reduction.ts';
export { altitudeAtPressureM, pressureAtAltitudeKPa } from './standard-atmosphere.ts';
export { stationPressure } from './station-pressure.ts';
