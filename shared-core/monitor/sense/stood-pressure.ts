import { median } from '../../uncertainty/index.ts';
import { lastsAfterS } from '../patience.ts';

/** The air pressure that a channel first showed for a while, and that holds from then on. */
export interface StoodPressure {
  /** Takes a reading; gives what has stood, the same for the whole run, and null before [kPa]. */
  see(timeS: number, pressureKPa: number): number | null;
}

/** So many readings must say so. */
const leastReadings = 3;
/** Twenty times what a small digital barometer flickers by; a value of power coming on is further off; chosen here [kPa]. */
const withinKPa = 0.5;

/**
 * Weather moves the air pressure by some 0.1 kPa in the three hours of a run (marine forecasts call more "changing"; from memory of
 * the Met Office's glossary), 0.03 K at the limit. A sensor that fails moves it by anything. So what a channel has once
 * shown for a minute is kept, and nothing it says later is followed.
 */
export function createStoodPressure(): StoodPressure {
  let since: { readonly timeS: number; readonly valuesKPa: number[] } = { timeS: 0, valuesKPa: [] };
  let stoodKPa: number | null = null;
  return {
    see: (timeS, pressureKPa) => {
      if (stoodKPa !== null) return stoodKPa;
      const [firstKPa = Number.NaN] = since.valuesKPa;
      // Nor is anything near what has not come.
      if (!(Math.abs(pressureKPa - firstKPa) <= withinKPa)) since = { timeS, valuesKPa: [] };
      since.valuesKPa.push(pressureKPa);
      const hasStood =
        timeS - since.timeS >= lastsAfterS && since.valuesKPa.length >= leastReadings;
      if (hasStood) stoodKPa = median(since.valuesKPa);
      return stoodKPa;
    },
  };
}
