import { fail, type Result, succeed } from '../result/index.ts';
import { applyCalibration, type Calibration } from './calibration.ts';

/** What the probe showed where the temperature was known. */
export interface CalibrationPoint {
  readonly readingC: number;
  readonly readingStandardUncertaintyK: number;
  readonly referenceC: number;
  readonly referenceStandardUncertaintyK: number;
}

/** Why points make no calibration, with the numbers that show it. */
export type CalibrationProblem =
  | { readonly kind: 'not-a-number' }
  | { readonly kind: 'points-too-close'; readonly spanK: number; readonly leastK: number }
  /** The probe showed less where it was hotter: the baths were mixed up, or its wires. */
  | { readonly kind: 'points-swapped' }
  | {
      readonly kind: 'correction-too-large';
      readonly referenceC: number;
      readonly correctionK: number;
      readonly limitK: number;
    }
  | {
      readonly kind: 'gain-implausible';
      readonly gain: number;
      readonly low: number;
      readonly high: number;
    }
  | {
      readonly kind: 'too-uncertain';
      readonly standardUncertaintyK: number;
      readonly limitK: number;
    };

/**
 * Beyond these a probe is broken or the bath was not what it was thought to be. A type K thermocouple of class 2 may
 * be 2.5 K off at either end (IEC 60584-1); twice that is refused. Ice and steam are 100 K apart; 40 K is the least that
 * does not magnify the doubt at the plateau more than about twofold.
 */
export const calibrationLimits = {
  leastSpanK: 40,
  largestCorrectionK: 5,
  lowestGain: 0.95,
  highestGain: 1.05,
  largestUncertaintyK: 1,
} as const;

/**
 * Offset and gain from two known temperatures:
 * `g = (T₂ − T₁)/(r₂ − r₁)`, `o = T₁ − g r₁`. With vᵢ = u²(Tᵢ) + g² u²(rᵢ) and Δ = r₂ − r₁:
 * `V(g) = (v₁ + v₂)/Δ²`, `V(o) = (v₁ r₂² + v₂ r₁²)/Δ²`, `C = −(v₁ r₂ + v₂ r₁)/Δ²`.
 *
 * @param low colder point (ice): temperatures [°C], uncertainties [K] ≥ 0
 * @param high hotter point (steam), at least 40 K above
 * @returns the calibration, or why the points make none
 *
 * Source: straight line through two points; JCGM 100:2008, equation (13).
 *
 * @example
 * const doubt = { readingStandardUncertaintyK: 0.03, referenceStandardUncertaintyK: 0.04 };
 * const ice = { readingC: 0.4, referenceC: 0, ...doubt };
 * const steam = { readingC: 99.4, referenceC: 99.4, ...doubt };
 * calibrateAtTwoPoints(ice, steam).value.gain // ≈ 1.00404 ± 1e-5
 */
export function calibrateAtTwoPoints(
  low: CalibrationPoint,
  high: CalibrationPoint,
): Result<Calibration, CalibrationProblem> {
  if (!isSound(low) || !isSound(high)) return fail({ kind: 'not-a-number' });
  const spanK = high.referenceC - low.referenceC;
  const { leastSpanK, lowestGain, highestGain } = calibrationLimits;
  if (Math.abs(spanK) < leastSpanK) {
    return fail({ kind: 'points-too-close', spanK, leastK: leastSpanK });
  }
  const difference = high.readingC - low.readingC;
  if (spanK * difference <= 0 || spanK < 0) return fail({ kind: 'points-swapped' });
  const large = tooLarge(low) ?? tooLarge(high);
  if (large !== undefined) return fail(large);
  const gain = spanK / difference;
  if (gain < lowestGain || gain > highestGain) {
    return fail({ kind: 'gain-implausible', gain, low: lowestGain, high: highestGain });
  }
  const v1 = variance(low, gain);
  const v2 = variance(high, gain);
  const square = difference ** 2;
  return notTooUncertain(
    {
      offsetK: low.referenceC - gain * low.readingC,
      gain,
      gainVariance: (v1 + v2) / square,
      offsetVarianceK2: (v1 * high.readingC ** 2 + v2 * low.readingC ** 2) / square,
      covarianceK: -(v1 * high.readingC + v2 * low.readingC) / square,
    },
    [low.readingC, high.readingC],
  );
}

/**
 * Offset from one known temperature: `o = T₁ − r₁`, gain 1 with the doubt of an unknown gain growing away from the point,
 * `u²(T) = v₁ + (r − r₁)² u²(g)`.
 *
 * @param point temperatures [°C], uncertainties [K] ≥ 0
 * @param gainStandardUncertainty [K/K], 0 … 0.05; default 0.005/√3, the slope of platinum class B
 * @returns the calibration, or why the point makes none
 *
 * Source: JCGM 100:2008, equation (13); IEC 60751:2008, table 3 for the default.
 *
 * @example
 * const steam = { readingC: 98.9, referenceC: 99.4, readingStandardUncertaintyK: 0.03, referenceStandardUncertaintyK: 0.04 };
 * calibrateAtOnePoint(steam).value.offsetK // ≈ 0.5 ± 1e-9
 */
export function calibrateAtOnePoint(
  point: CalibrationPoint,
  gainStandardUncertainty = 0.005 / Math.sqrt(3),
): Result<Calibration, CalibrationProblem> {
  const gainKnown = gainStandardUncertainty >= 0 && gainStandardUncertainty <= 0.05;
  if (!isSound(point) || !gainKnown) return fail({ kind: 'not-a-number' });
  const large = tooLarge(point);
  if (large !== undefined) return fail(large);
  const gainVariance = gainStandardUncertainty ** 2;
  return notTooUncertain(
    {
      offsetK: point.referenceC - point.readingC,
      gain: 1,
      gainVariance,
      offsetVarianceK2: variance(point, 1) + point.readingC ** 2 * gainVariance,
      covarianceK: -point.readingC * gainVariance,
    },
    [point.readingC],
  );
}

function isSound(point: CalibrationPoint): boolean {
  const { readingStandardUncertaintyK, referenceStandardUncertaintyK } = point;
  return (
    Object.values(point).every((value) => Number.isFinite(value)) &&
    readingStandardUncertaintyK >= 0 &&
    referenceStandardUncertaintyK >= 0
  );
}

function tooLarge({ readingC, referenceC }: CalibrationPoint): CalibrationProblem | undefined {
  const correctionK = referenceC - readingC;
  const limitK = calibrationLimits.largestCorrectionK;
  return Math.abs(correctionK) > limitK
    ? { kind: 'correction-too-large', referenceC, correctionK, limitK }
    : undefined;
}

function variance(point: CalibrationPoint, gain: number): number {
  return point.referenceStandardUncertaintyK ** 2 + (gain * point.readingStandardUncertaintyK) ** 2;
}

function notTooUncertain(
  calibration: Calibration,
  readingsC: readonly number[],
): Result<Calibration, CalibrationProblem> {
  const limitK = calibrationLimits.largestUncertaintyK;
  const standardUncertaintyK = Math.max(
    ...readingsC.map((readingC) => applyCalibration(calibration, readingC).standardUncertaintyK),
  );
  return standardUncertaintyK > limitK
    ? fail({ kind: 'too-uncertain', standardUncertaintyK, limitK })
    : succeed(calibration);
}
