import { requireInRange } from '../result/index.ts';

/**
 * Correction `true = offset + gain × reading` with the covariance of its two numbers. Plain data: it is kept in the
 * run's header.
 */
export interface Calibration {
  readonly offsetK: number;
  /** [K/K] */
  readonly gain: number;
  /** [K²] */
  readonly offsetVarianceK2: number;
  /** [K²/K²] */
  readonly gainVariance: number;
  /** Of offset and gain [K]. */
  readonly covarianceK: number;
}

/** A corrected temperature and what the calibration leaves in doubt. */
export interface CorrectedTemperature {
  readonly temperatureC: number;
  readonly standardUncertaintyK: number;
}

/**
 * Corrects a reading: `T = o + g r` with `u² = V(o) + r² V(g) + 2 r C(o, g)`; the reading's own noise is not in it.
 *
 * @param calibration from {@link calibrateAtTwoPoints} or {@link calibrateAtOnePoint}
 * @param readingC what the probe shows [°C], any finite number −100 … 300
 * @throws OutOfRangeError outside this range
 *
 * Source: JCGM 100:2008, equation (13).
 *
 * @example
 * const calibration = { offsetK: 0.5, gain: 1, offsetVarianceK2: 0.01, gainVariance: 0, covarianceK: 0 };
 * applyCalibration(calibration, 78) // => {"temperatureC":78.5,"standardUncertaintyK":0.1}
 */
export function applyCalibration(calibration: Calibration, readingC: number): CorrectedTemperature {
  requireInRange('reading', readingC, -100, 300, '°C');
  const { offsetK, gain, offsetVarianceK2, gainVariance, covarianceK } = calibration;
  const variance = offsetVarianceK2 + readingC ** 2 * gainVariance + 2 * readingC * covarianceK;
  return {
    temperatureC: offsetK + gain * readingC,
    // Rounding may leave a variance of −1e-17 where nothing is in doubt.
    standardUncertaintyK: Math.sqrt(Math.max(0, variance)),
  };
}
