import {
  applyCalibration,
  type Calibration,
  type CalibrationPoint,
  type CalibrationProblem,
  calibrateAtOnePoint,
  calibrateAtTwoPoints,
  icePoint,
  type ReferencePoint,
  type Result,
  type SettledReading,
  steamPoint,
} from '#shared-core';
import type { ProbeCorrection } from '../stores/index.ts';
import type { CalibrationState } from './calibration-state.ts';

/** Where it matters: the azeotrope at standard pressure, near enough for any altitude. */
const plateauC = 78;

export interface AirPressure {
  readonly pressureKPa: number;
  readonly standardUncertaintyKPa: number;
}

/** The correction from what was taken; null while nothing was. */
export function correctionFrom(
  { ice, steam }: CalibrationState,
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

/** What the correction adds to a reading near the plateau [K]. */
export function correctionAtPlateauK({ offsetK, gain }: ProbeCorrection): number {
  return offsetK + (gain - 1) * plateauC;
}
