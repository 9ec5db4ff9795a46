import { type Contribution, standardFromHalfWidth } from '../uncertainty/index.ts';
import { worded } from '../wording/index.ts';
import type {
  AltitudeEvidence,
  BarometerEvidence,
  ChannelEvidence,
  SeaLevelEvidence,
} from './pressure-evidence.ts';
import { stationPressureFromSeaLevelKPa } from './sea-level-reduction.ts';
import { pressureAtAltitudeKPa, standardAtmosphere } from './standard-atmosphere.ts';

const defaultToleranceKPa = 0.1;
const defaultAltitudeToleranceM = 20;

/**
 * Standard deviation of sea-level pressure about its usual value. Daily values in middle latitudes spread by
 * 0.5 kPa (summer) to 1.2 kPa (winter), in the tropics by 0.2 kPa; 1.0 kPa gives the ± 2 kPa (k = 2) used here.
 * From memory of reanalysis climatologies; no single table.
 */
const weatherStandardKPa = 1.0;

/**
 * Usual change of pressure with time. 0.1 kPa in 3 h separates "steady or slow" from "changing" in marine
 * forecasts (slowly: 0.01–0.15 kPa in 3 h); from memory of the Met Office's glossary.
 */
const driftKPaPerH = 0.1 / 3;

/** A value read before a run is so old when it is used [h]; a lesson. */
const lessonH = 2;

/**
 * How far the weather takes the air pressure within a lesson of two hours, `u = 0.1 kPa / 3 h · 2 h`.
 *
 * @returns standard uncertainty [kPa]
 *
 * Source: the usual change that separates "steady" from "changing" in marine forecasts; from memory.
 * @example
 * weatherInLessonKPa() // ≈ 0.067 ± 0.001
 */
export function weatherInLessonKPa(): number {
  return driftKPaPerH * lessonH;
}

/** Air columns are warmer or colder than the standard one by about this much; round figure, no source. */
const columnTemperatureStandardK = 10;

/** Pressure differs between the still and the reporting station; 0.1 kPa in 100 km is a usual gradient, no source. */
const distanceStandardKPa = 0.1;

export function barometerDoubts(evidence: BarometerEvidence): readonly Contribution[] {
  const { toleranceKPa = defaultToleranceKPa, resolutionKPa = 0.1, ageH = lessonH } = evidence;
  return [
    instrument(toleranceKPa, evidence.toleranceKPa === undefined),
    {
      name: worded('smallest step of the barometer'),
      distribution: 'rectangular',
      inputStandardUncertainty: standardFromHalfWidth('rectangular', resolutionKPa / 2),
      sensitivity: 1,
      reason: worded('steps of {resolution} kPa', { resolution: resolutionKPa }),
    },
    weatherSince(ageH),
  ];
}

export function channelDoubts(evidence: ChannelEvidence): readonly Contribution[] {
  const { toleranceKPa = defaultToleranceKPa } = evidence;
  return [instrument(toleranceKPa, evidence.toleranceKPa === undefined)];
}

export function seaLevelDoubts(evidence: SeaLevelEvidence): readonly Contribution[] {
  const { altitudeM, altitudeToleranceM = defaultAltitudeToleranceM, ageH = 3 } = evidence;
  const pressureKPa = stationPressureFromSeaLevelKPa(evidence);
  return [
    {
      name: worded('distance to the weather station and rounding'),
      distribution: 'normal',
      inputStandardUncertainty: distanceStandardKPa,
      sensitivity: pressureKPa / evidence.seaLevelPressureKPa,
      reason: worded('a usual change over 100 km; no source'),
    },
    weatherSince(ageH),
    altitudeDoubt(pressureKPa, altitudeToleranceM),
    columnTemperature(
      pressureKPa,
      altitudeM,
      evidence.temperatureC === undefined ? columnTemperatureStandardK : 3,
    ),
  ];
}

export function altitudeDoubts(evidence: AltitudeEvidence): readonly Contribution[] {
  const { altitudeM, altitudeToleranceM = defaultAltitudeToleranceM } = evidence;
  const pressureKPa = pressureAtAltitudeKPa(altitudeM);
  return [
    {
      name: worded('weather'),
      distribution: 'normal',
      inputStandardUncertainty: weatherStandardKPa,
      sensitivity: pressureKPa / standardAtmosphere.seaLevelPressureKPa,
      reason: worded('day-to-day spread of sea-level pressure in middle latitudes; from memory'),
    },
    altitudeDoubt(pressureKPa, altitudeToleranceM),
    columnTemperature(pressureKPa, altitudeM, columnTemperatureStandardK),
  ];
}

function instrument(toleranceKPa: number, assumed: boolean): Contribution {
  return {
    name: worded('error of the barometer'),
    distribution: 'rectangular',
    inputStandardUncertainty: standardFromHalfWidth('rectangular', toleranceKPa),
    sensitivity: 1,
    reason: assumed
      ? worded(
          'limits ± {tolerance} kPa assumed, as usual for small digital barometers; from memory',
          { tolerance: toleranceKPa },
        )
      : worded('stated limits ± {tolerance} kPa', { tolerance: toleranceKPa }),
  };
}

export function weatherSince(ageH = lessonH): Contribution {
  return {
    name: worded('weather since the reading'),
    distribution: 'normal',
    inputStandardUncertainty: ageH,
    sensitivity: driftKPaPerH,
    reason: worded('{ageH} h at a usual change of 0.1 kPa in 3 h; from memory', { ageH }),
  };
}

/** dp/dH = −p g/(R T), at the standard temperature of sea level; enough for a doubt. */
function columnSlopePerM(): number {
  const { gravityMPerS2, gasConstantJPerKgK, seaLevelTemperatureK } = standardAtmosphere;
  return gravityMPerS2 / (gasConstantJPerKgK * seaLevelTemperatureK);
}

function altitudeDoubt(pressureKPa: number, toleranceM: number): Contribution {
  return {
    name: worded('altitude of the still'),
    distribution: 'rectangular',
    inputStandardUncertainty: standardFromHalfWidth('rectangular', toleranceM),
    sensitivity: -pressureKPa * columnSlopePerM(),
    reason: worded('limits ± {toleranceM} m', { toleranceM }),
  };
}

/** ln(q/p) = g H/(R T), so the pressure follows the column temperature by p g H/(R T²). */
function columnTemperature(
  pressureKPa: number,
  altitudeM: number,
  standardK: number,
): Contribution {
  return {
    name: worded('temperature of the air below the still'),
    distribution: 'normal',
    inputStandardUncertainty: standardK,
    sensitivity:
      (pressureKPa * columnSlopePerM() * altitudeM) / standardAtmosphere.seaLevelTemperatureK,
    reason: worded(
      'the air column may be {standard} °C off what was assumed; round figure, no source',
      { standard: standardK },
    ),
  };
}
