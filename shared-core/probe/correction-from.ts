import type { Result } from '../result/index.ts';
import {
  type CalibrationPoint,
  type CalibrationProblem,
  calibrateAtOnePoint,
  calibrateAtTwoPoints,
} from './calibrate.ts';
import { applyCalibration, type Calibration } from './calibration.ts';
import { icePoint, type ReferencePoint, steamPoint } from './reference-point.ts';
import type { SettledReading } from './settled-reading.ts';

/** A probe's correction as a run's settings hold it, with its doubt where the plateau lies. */
export interface ProbeCorrection {
  readonly offsetK: number;
  readonly gain: number;
  readonly standardUncertaintyK: number;
}

/** What a probe showed in ice and in steam; null where it was not held. */
export interface BathReadings {
  readonly ice: SettledReading | null;
  readonly steam: SettledReading | null;
}

/** Where it matters: the azeotrope at standard pressure, near enough for any altitude. */
const plateauC = 78;

export interface AirPressure {
  readonly pressureKPa: number;
  readonly standardUncertaintyKPa: number;
}

/**
 * The correction of a probe from ice of tap water, from steam, or from both; null from neither: `true = gain · shown + offset`.
 *
 * @param baths settled readings [°C] with their uncertainties [K]
 * @param pressure air pressure at the steam [kPa], 50 … 115, as read at the place
 *
 * Source: this project's own use of `calibrateAtTwoPoints` and `calibrateAtOnePoint`, which name theirs.
 * @example
 * const readingOf = (readingC) => ({ readingC, standardUncertaintyK: 0.05, driftKPerMin: 0 });
 * const air = { pressureKPa: 101.325, standardUncertaintyKPa: 0.1 };
 * correctionFrom({ ice: null, steam: null }, air) // => null
 * correctionFrom({ ice: readingOf(0.4), steam: null }, air).value.offsetK // ≈ -0.4 ± 0.01
 */
export function correctionFrom(
  { ice, steam }: BathReadings,
  pressure: AirPressure,
): Result<ProbeCorrection, CalibrationProblem> | null {
  const low = ice && pointOf(ice, icePoint('tap'));
  const high = steam && pointOf(steam, steamPoint({ kind: 'station', ...pressure }));
  const only = high ?? low;
  if (only === null) return null;
  const made = low && high ? calibrateAtTwoPoints(low, high) : calibrateAtOnePoint(only);
  return made.ok ? { ok: true, value: correctionOf(made.value) } : made;
}

function pointOf(settled: SettledReading, reference: ReferencePoint): CalibrationPoint {
  return {
    readingC: settled.readingC,
    readingStandardUncertaintyK: settled.standardUncertaintyK,
    referenceC: reference.temperatureC,
    referenceStandardUncertaintyK: reference.standardUncertaintyK,
  };
}

function correctionOf(calibration: Calibration): ProbeCorrection {
  const { offsetK, gain } = calibration;
  const { standardUncertaintyK } = applyCalibration(calibration, plateauC);
  return { offsetK, gain, standardUncertaintyK };
}

/**
 * What a correction adds to a reading near the plateau: `ΔT = offset + (gain - 1) · 78 °C` [K].
 *
 * @param correction offset [K] -5 … 5 and gain 0.95 … 1.05, as calibration allows them
 *
 * Source: this project's choice of the place; the azeotrope at standard pressure.
 * @example
 * correctionAtPlateauK({ offsetK: -0.4, gain: 1, standardUncertaintyK: 0.1 }) // => -0.4
 */
export function correctionAtPlateauK({ offsetK, gain }: ProbeCorrection): number {
  return offsetK + (gain - 1) * plateauC;
}
