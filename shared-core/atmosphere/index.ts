/** Air pressure at the still, from whatever is known, with its doubt. */
export { judgeBarometerEntry } from './judge-barometer-entry.ts';
export { judgeSteamReading } from './judge-steam-reading.ts';
export { weatherInLessonKPa } from './pressure-doubts.ts';
export type { StationPressure } from './pressure-evidence.ts';
export { pressureAtAltitudeKPa } from './standard-atmosphere.ts';
export { stationPressure } from './station-pressure.ts';
export { steamRealisationK } from './steam-doubts.ts';
