import { fail, type Result, succeed } from '../result/index.ts';
import { regressionLine, type TimedTemperature } from './regression-line.ts';

/** The probe's own value in a bath of known temperature. */
export interface SettledReading {
  readonly readingC: number;
  readonly standardUncertaintyK: number;
  readonly driftKPerMin: number;
}

/** Why readings cannot stand for a settled bath, with the numbers that show it. */
export type UnsettledProblem =
  | { readonly kind: 'not-a-number' }
  | {
      readonly kind: 'too-short';
      readonly count: number;
      readonly spanS: number;
      readonly leastSpanS: number;
    }
  | {
      readonly kind: 'still-drifting';
      readonly driftKPerMin: number;
      readonly limitKPerMin: number;
    }
  | { readonly kind: 'too-noisy'; readonly noiseK: number; readonly limitK: number };

/** What counts as settled in a class: enough readings, half a minute, 0.1 K a minute; common practice, no source. */
const settledLimits = {
  leastCount: 10,
  leastSpanS: 30,
  driftKPerMin: 0.1,
  noiseK: 0.3,
} as const;

/**
 * Mean of readings in a calibration bath and its uncertainty `u² = s²/n + (drift over the window)²/12 + step²/12`:
 * scatter about a straight line, what is left of the drift, and the probe's smallest step.
 *
 * @param readings times [s] and temperatures [°C], any order; at least 10 over at least 30 s
 * @param resolutionK smallest step of the probe [K], ≥ 0
 * @returns the settled value, or why it is none
 *
 * Source: JCGM 100:2008, 4.2 (scatter) and 4.3.7 (rectangular limits).
 *
 * @example
 * const bath = Array.from({ length: 60 }, (_, timeS) => ({ timeS, temperatureC: 0.3 + 0.01 * (timeS % 2) }));
 * settledReading(bath, 0.01).value.readingC // ≈ 0.305 ± 1e-9
 */
export function settledReading(
  readings: readonly TimedTemperature[],
  resolutionK: number,
): Result<SettledReading, UnsettledProblem> {
  const finite = readings.every((one) => Number.isFinite(one.timeS + one.temperatureC));
  if (!finite || !(resolutionK >= 0)) return fail({ kind: 'not-a-number' });
  const times = readings.map(({ timeS }) => timeS);
  const count = times.length;
  const spanS = count === 0 ? 0 : Math.max(...times) - Math.min(...times);
  const { leastCount, leastSpanS } = settledLimits;
  if (count < leastCount || spanS < leastSpanS) {
    return fail({ kind: 'too-short', count, spanS, leastSpanS });
  }
  const line = regressionLine(readings);
  const driftKPerMin = line.slopeKPerS * 60;
  const { noiseK: limitK, driftKPerMin: limitKPerMin } = settledLimits;
  // Noise alone looks like some drift: only what is beyond two standard deviations of the slope counts.
  const slopeDoubtKPerS = line.residualStandardDeviationK / Math.sqrt(line.timeSpreadS2);
  if (Math.abs(driftKPerMin) - 2 * 60 * slopeDoubtKPerS > limitKPerMin) {
    return fail({ kind: 'still-drifting', driftKPerMin, limitKPerMin });
  }
  // Asked last: a probe on its way from one bath to the next lies on no straight line, and hangs as it should.
  if (line.residualStandardDeviationK > limitK) {
    return fail({ kind: 'too-noisy', noiseK: line.residualStandardDeviationK, limitK });
  }
  const variance =
    line.residualStandardDeviationK ** 2 / count +
    (line.slopeKPerS * spanS) ** 2 / 12 +
    resolutionK ** 2 / 12;
  return succeed({
    readingC: line.meanTemperatureC,
    standardUncertaintyK: Math.sqrt(variance),
    driftKPerMin,
  });
}
