import { saturationTemperatureC } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import { worded } from '../wording/index.ts';
import { stationPressure } from './station-pressure.ts';

/** What the head probe shows in steam, and what else is known of the place. */
export interface SteamEntry {
  /** After the probe's correction. */
  readonly steamC: number;
  readonly probeStandardUncertaintyK: number;
  /** Null where nobody has said how high the still stands. */
  readonly altitudeM: number | null;
  /** Between which air pressures a still is run at all. */
  readonly possibleKPa: { readonly low: number; readonly high: number };
}

/** Whether it can be the steam of boiling water, and a sentence for the person where something is to be done. */
export type SteamJudgement =
  | { readonly kind: 'plausible' }
  | { readonly kind: 'too-cool'; readonly sentence: string }
  | { readonly kind: 'too-hot'; readonly sentence: string }
  /** Steam, but this altitude's weather and the probe's limits of error together do not explain the reading. */
  | { readonly kind: 'reads-low'; readonly sentence: string }
  | { readonly kind: 'reads-high'; readonly sentence: string };

/**
 * Says whether what a probe shows can be the steam of boiling water: between the boiling points at the ends of the air pressure, and,
 * where the altitude is known, at a distance `d = T − Tsat(p(H))` of `|d| ≤ √3 u(probe) + 2 dT/dp u(weather)`: the probe's limits of
 * error and two standard deviations of the weather. So a probe that is off by more than it should be is found out.
 *
 * @param entry steam [°C], any finite number; standard uncertainty of the probe [K], 0 … 5; altitude [m], −430 … 5000; air
 * pressures [kPa], 50 … 115
 * @throws OutOfRangeError outside these ranges
 *
 * Source: IAPWS SR1-86(1992) for the boiling point; ISO 2533:1975 for the pressure of the altitude; the weather's spread from memory.
 *
 * @example
 * const place = { probeStandardUncertaintyK: 0.29, altitudeM: 0, possibleKPa: { low: 60, high: 110 } };
 * judgeSteamReading({ ...place, steamC: 100.3 }).kind // => "plausible"
 * judgeSteamReading({ ...place, steamC: 97.9 }).kind // => "reads-low"
 * judgeSteamReading({ ...place, steamC: 21.4 }).kind // => "too-cool"
 */
export function judgeSteamReading(entry: SteamEntry): SteamJudgement {
  const { steamC, possibleKPa } = entry;
  requireInRange('steam', steamC, -Number.MAX_VALUE, Number.MAX_VALUE, '°C');
  const lowC = saturationTemperatureC('water', possibleKPa.low);
  const highC = saturationTemperatureC('water', possibleKPa.high);
  const told = { shown: steamC.toFixed(1), low: lowC.toFixed(0), high: highC.toFixed(0) };
  if (steamC < lowC) {
    return {
      kind: 'too-cool',
      sentence: worded(
        '{shown} °C is not the steam of boiling water: that has {low} to {high} °C. Hang the probe in the steam, above the water; let the water boil well, and wait until the reading stands.',
        told,
      ),
    };
  }
  if (steamC > highC) {
    return {
      kind: 'too-hot',
      sentence: worded(
        '{shown} °C is not the steam of boiling water: that has {low} to {high} °C. Hang the probe above the water, not in it, clear of the glass, and boil water without salt.',
        told,
      ),
    };
  }
  return judgeAtAltitude(entry);
}

function judgeAtAltitude(entry: SteamEntry): SteamJudgement {
  const { steamC, probeStandardUncertaintyK, altitudeM } = entry;
  requireInRange('uncertainty of the probe', probeStandardUncertaintyK, 0, 5, 'K');
  if (altitudeM === null) return { kind: 'plausible' };
  const air = stationPressure({ kind: 'altitude', altitudeM });
  const boilingC = saturationTemperatureC('water', air.pressureKPa);
  const weatherK =
    saturationTemperatureC('water', air.pressureKPa + air.expandedUncertaintyKPa) - boilingC;
  // Limits of error are a rectangular distribution, u = a/√3 (JCGM 100:2008, 4.3.7).
  const probeLimitK = Math.sqrt(3) * probeStandardUncertaintyK;
  const apartK = steamC - boilingC;
  if (Math.abs(apartK) <= probeLimitK + weatherK) return { kind: 'plausible' };
  const told = {
    altitudeM: altitudeM.toFixed(0),
    boiling: boilingC.toFixed(1),
    weather: weatherK.toFixed(1),
    shown: steamC.toFixed(1),
    limit: probeLimitK.toFixed(1),
  };
  return apartK < 0
    ? {
        kind: 'reads-low',
        sentence: worded(
          'At {altitudeM} m water boils at {boiling} °C ± {weather} K, but the probe shows {shown} °C: it hangs in too little steam, reads too low by more than its ± {limit} K, or the altitude is not right. Boil harder, hang it deeper in the steam and take the reading again: one that is too low calls heat off too early.',
          told,
        ),
      }
    : {
        kind: 'reads-high',
        sentence: worded(
          'At {altitudeM} m water boils at {boiling} °C ± {weather} K, but the probe shows {shown} °C: it reads too high by more than its ± {limit} K, touches water or glass, or the altitude is not right. Hang it freely above the water and take the reading again. If it stays so, check the altitude: the limit on this probe holds all the same.',
          told,
        ),
      };
}
