import { requireInRange } from '../result/index.ts';
import { worded } from '../wording/index.ts';
import { recogniseUnit } from './recognise-unit.ts';
import { stationPressureFromSeaLevelKPa } from './sea-level-reduction.ts';
import { pressureAtAltitudeKPa, standardAtmosphere } from './standard-atmosphere.ts';

/** What was typed as the pressure at the still, and the altitude it was typed at. */
export interface BarometerEntry {
  readonly pressureKPa: number;
  readonly altitudeM: number;
}

/** What the entry most likely is, and a sentence for the person. */
export type BarometerJudgement =
  | { readonly kind: 'plausible'; readonly sentence: string }
  /** Could be either; the two readings of it differ enough to matter. */
  | {
      readonly kind: 'may-be-sea-level';
      readonly sentence: string;
      readonly stationPressureKPa: number;
    }
  | {
      readonly kind: 'looks-like-sea-level';
      readonly sentence: string;
      /** The entry converted to the still's altitude. */
      readonly stationPressureKPa: number;
    }
  | {
      readonly kind: 'other-unit';
      readonly sentence: string;
      readonly unit: string;
      readonly stationPressureKPa: number;
    }
  | { readonly kind: 'implausible'; readonly sentence: string };

/** Two standard deviations of the weather; see the altitude source of {@link stationPressure}. */
const usualWeatherKPa = 2;
/** Deep lows and strong highs in inhabited places reach 95 and 105 kPa at sea level; from memory. */
const extremeWeatherKPa = 6;
/** Below this the difference moves the boiling point by less than 0.1 °C. */
const negligibleKPa = 0.3;

/**
 * Says in plain words whether a pressure typed as "at the still" can be one, or looks like a value reduced to sea
 * level, or like another unit.
 *
 * Rule: with e(H) the standard pressure of the altitude, the entry's distance from station weather is
 * `(p/e − 1) p0` and from sea-level weather `p − p0`. It looks like a sea-level value when it is nearer to that and
 * more than 2 kPa (two standard deviations of the weather) from the other, unless both mean the same within 0.3 kPa.
 *
 * @param entry pressure [kPa], any finite number; altitude of the still [m], −430 … 5000
 * @throws OutOfRangeError for another altitude or a pressure that is no number
 *
 * Source: ISO 2533:1975 for e(H); the limits are the weather's spread, from memory.
 *
 * @example
 * judgeBarometerEntry({ pressureKPa: 101.6, altitudeM: 600 }).kind // => "looks-like-sea-level"
 * judgeBarometerEntry({ pressureKPa: 94.1, altitudeM: 600 }).kind // => "plausible"
 * judgeBarometerEntry({ pressureKPa: 1013, altitudeM: 0 }).kind // => "other-unit"
 */
export function judgeBarometerEntry(entry: BarometerEntry): BarometerJudgement {
  const { pressureKPa, altitudeM } = entry;
  requireInRange('pressure', pressureKPa, -Number.MAX_VALUE, Number.MAX_VALUE, 'kPa');
  requireInRange('altitude', altitudeM, -430, 5000, 'm');
  const { seaLevelPressureKPa } = standardAtmosphere;
  const expectedKPa = pressureAtAltitudeKPa(altitudeM);
  const asStationKPa = Math.abs(pressureKPa / expectedKPa - 1) * seaLevelPressureKPa;
  const asSeaLevelKPa = Math.abs(pressureKPa - seaLevelPressureKPa);
  const usual = worded('About {expected} kPa is usual at {altitudeM} m', {
    expected: expectedKPa.toFixed(1),
    altitudeM: altitudeM.toFixed(0),
  });
  if (asSeaLevelKPa < asStationKPa && asSeaLevelKPa <= extremeWeatherKPa) {
    const stationPressureKPa = stationPressureFromSeaLevelKPa({
      seaLevelPressureKPa: pressureKPa,
      altitudeM,
    });
    // Near sea level both readings mean the same: there is nothing to tell apart, whatever the weather.
    const differs = Math.abs(pressureKPa - stationPressureKPa) > negligibleKPa;
    const entered = `${pressureKPa.toFixed(1)} kPa`;
    const meaning = worded(
      'enter it as a sea-level value: it then means {stationPressure} kPa here.',
      { stationPressure: stationPressureKPa.toFixed(1) },
    );
    if (differs && asStationKPa > usualWeatherKPa) {
      return {
        kind: 'looks-like-sea-level',
        stationPressureKPa,
        sentence: worded(
          '{entered} looks like a weather-report value reduced to sea level. {usual}. Read a barometer in the room, or {meaning}',
          { entered, usual, meaning },
        ),
      };
    }
    if (differs) {
      return {
        kind: 'may-be-sea-level',
        stationPressureKPa,
        sentence: worded(
          '{entered} is possible here, but fits a value reduced to sea level better. {usual}. If it comes from a weather report, {meaning}',
          { entered, usual, meaning },
        ),
      };
    }
  }
  if (asStationKPa <= extremeWeatherKPa) {
    return {
      kind: 'plausible',
      sentence: worded('{pressure} kPa is plausible. {usual}.', {
        pressure: pressureKPa.toFixed(1),
        usual,
      }),
    };
  }
  const other = recogniseUnit(pressureKPa, expectedKPa);
  if (other !== undefined) {
    return {
      kind: 'other-unit',
      ...other,
      sentence: worded(
        '{pressure} is not a pressure in kPa, but it would be one in {unit}: {stationPressure} kPa. {usual}.',
        {
          pressure: pressureKPa,
          unit: other.unit,
          stationPressure: other.stationPressureKPa.toFixed(1),
          usual,
        },
      ),
    };
  }
  return {
    kind: 'implausible',
    sentence: worded(
      '{pressure} kPa cannot be the air pressure here. {usual}. Check the altitude and the barometer.',
      { pressure: pressureKPa, usual },
    ),
  };
}
