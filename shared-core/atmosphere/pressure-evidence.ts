import type { BudgetLine } from '../uncertainty/index.ts';

/**
 * How the air pressure at the still is known. The two kinds of pressure have different field names, so that a
 * value reduced to sea level cannot be handed over as the pressure on the still without saying so.
 */
export type PressureEvidence =
  | BarometerEvidence
  | ChannelEvidence
  | SeaLevelEvidence
  | SteamEvidence
  | AltitudeEvidence;

/** Read from a barometer in the room. */
export interface BarometerEvidence {
  readonly kind: 'barometer';
  readonly stationPressureKPa: number;
  /** Limits of error of the instrument ±; default 0.1 kPa. */
  readonly toleranceKPa?: number;
  /** Smallest step shown; default 0.1 kPa. */
  readonly resolutionKPa?: number;
  /** How old the value will be when it is used; default 2 h, a lesson. */
  readonly ageH?: number;
}

/** Measured all the time by a sensor beside the still. */
export interface ChannelEvidence {
  readonly kind: 'channel';
  readonly stationPressureKPa: number;
  /** Limits of error of the sensor ±; default 0.1 kPa. */
  readonly toleranceKPa?: number;
}

/** Taken from a weather report, reduced to sea level by the weather service. */
export interface SeaLevelEvidence {
  readonly kind: 'sea-level-report';
  readonly seaLevelPressureKPa: number;
  readonly altitudeM: number;
  /** Limits of error of the altitude ±; default 20 m. */
  readonly altitudeToleranceM?: number;
  /** Outdoor air temperature; without it the standard atmosphere is assumed. */
  readonly temperatureC?: number;
  /** How old the value will be when it is used; default 3 h. */
  readonly ageH?: number;
}

/** Where water boils, by the head probe itself. */
export interface SteamEvidence {
  readonly kind: 'steam';
  /** What the probe showed in the steam of well-boiling water, after its correction. */
  readonly steamC: number;
  readonly readingStandardUncertaintyK: number;
  /** Of the probe after any calibration. */
  readonly probeStandardUncertaintyK: number;
  /** How old the value will be when it is used; default 2 h, a lesson. */
  readonly ageH?: number;
}

/** Only the place is known. */
export interface AltitudeEvidence {
  readonly kind: 'altitude';
  readonly altitudeM: number;
  /** Limits of error of the altitude ±; default 20 m. */
  readonly altitudeToleranceM?: number;
}

/** The pressure that acts on the still, with its doubt. Never a sea-level value. */
export interface StationPressure {
  readonly kind: 'station';
  readonly source: PressureEvidence['kind'];
  readonly pressureKPa: number;
  readonly standardUncertaintyKPa: number;
  /** k = 2, about 95 %. */
  readonly expandedUncertaintyKPa: number;
  readonly components: readonly BudgetLine[];
  /** One plain sentence: the value, its doubt and the largest cause. */
  readonly sentence: string;
}
