export { judgeBarometerEntry } from './judge-barometer-entry.ts';
export type { StationPressure } from './pressure-evidence.ts';
export { pressureAtAltitudeKPa } from './standard-atmosphere.ts';
export { stationPressure } from './station-pressure.ts';
