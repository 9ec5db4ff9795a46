import { requireInRange } from '../result/index.ts';
import { type RegressionLine, regressionLine, type TimedTemperature } from './regression-line.ts';

/** The recent readings and the probe's lag. */
export interface LagWindow {
  /** In the order of time; the last one is "now". */
  readonly readings: readonly TimedTemperature[];
  readonly timeConstantS: number;
  /** Noise of one reading, when known better than the window's own scatter tells. */
  readonly noiseK?: number;
}

/** What surrounds the bulb, as far as its lag lets it be seen. */
export interface LagCorrected {
  readonly temperatureC: number;
  /** How far the bulb is behind. */
  readonly lagK: number;
  readonly slopeKPerS: number;
  /** Standard deviation of the result per standard deviation of one reading. */
  readonly noisePenalty: number;
  readonly standardUncertaintyK: number;
}

/**
 * Lag-corrected temperature: a first-order probe obeys `τ dT/dt = θ − T`, so the surroundings are `θ = T + τ dT/dt`. T and its slope come
 * from the least-squares line over the window, which makes θ the line extended by τ beyond now:
 * `θ = T̄ + b (t₀ + τ − t̄)`.
 *
 * The price is noise, `u(θ) = σ √(1/n + (t₀ + τ − t̄)²/Σ(tᵢ − t̄)²)` (see {@link lagNoisePenalty}), and for a curved course
 * a bias of `−T″ (W²/12 + W τ/2)` over a window of length W (dense readings).
 *
 * @param window times [s] and temperatures [°C], at least 3 readings at different times; time constant [s], 0 … 300; noise
 * of one reading [K], ≥ 0, by default the scatter about the line
 * @throws OutOfRangeError outside these ranges or for readings that are no numbers
 *
 * Source: first-order lag solved for its input; variance of an extrapolated least-squares line, e.g. Draper & Smith,
 * Applied Regression Analysis, 3rd ed., section 3.1 (from memory).
 *
 * @example
 * const readings = [0, 1, 2, 3, 4].map((timeS) => ({ timeS, temperatureC: 60 + 0.5 * timeS }));
 * lagCorrectedTemperature({ readings, timeConstantS: 6 }).temperatureC // ≈ 65 ± 1e-9
 * lagCorrectedTemperature({ readings, timeConstantS: 6 }).noisePenalty // ≈ 2.569 ± 0.001
 */
export function lagCorrectedTemperature(window: LagWindow): LagCorrected {
  const { readings, timeConstantS, noiseK } = window;
  for (const { temperatureC } of readings) {
    requireInRange('reading', temperatureC, -273.15, 2000, '°C');
  }
  const noisePenalty = lagNoisePenalty({
    timesS: readings.map(({ timeS }) => timeS),
    timeConstantS,
  });
  const line = regressionLine(readings);
  const nowS = readings.at(-1)?.timeS ?? Number.NaN;
  const lagK = timeConstantS * line.slopeKPerS;
  const scatterK = noiseK ?? line.residualStandardDeviationK;
  requireInRange('noise', scatterK, 0, 100, 'K');
  return {
    temperatureC: line.meanTemperatureC + line.slopeKPerS * (nowS - line.meanTimeS) + lagK,
    lagK,
    slopeKPerS: line.slopeKPerS,
    noisePenalty,
    standardUncertaintyK: noisePenalty * scatterK,
  };
}

/**
 * By how much lag correction multiplies the noise of one reading: `√(1/n + (t₀ + τ − t̄)²/Σ(tᵢ − t̄)²)`, t₀ the last time. For n even
 * steps d it is `√(1/n + 12 (τ + (n − 1) d/2)²/(n (n² − 1) d²))`, so it falls as n^(−3/2) while τ is longer than the window.
 *
 * @param window times of the readings [s], at least 3 and not all the same; time constant [s], 0 … 300
 * @throws OutOfRangeError outside these ranges
 *
 * Source: variance of an extrapolated least-squares line, as for {@link lagCorrectedTemperature}.
 *
 * @example
 * lagNoisePenalty({ timesS: [0, 1, 2, 3, 4], timeConstantS: 6 }) // ≈ 2.569 ± 0.001
 * lagNoisePenalty({ timesS: [0, 1, 2, 3, 4], timeConstantS: 0 }) // ≈ 0.775 ± 0.001
 */
export function lagNoisePenalty(window: {
  readonly timesS: readonly number[];
  readonly timeConstantS: number;
}): number {
  const { timesS, timeConstantS } = window;
  requireInRange('number of readings', timesS.length, 3, Number.MAX_SAFE_INTEGER, '');
  requireInRange('time constant', timeConstantS, 0, 300, 's');
  const line: RegressionLine = regressionLine(timesS.map((timeS) => ({ timeS, temperatureC: 0 })));
  requireInRange('spread of times', line.timeSpreadS2, Number.MIN_VALUE, Number.MAX_VALUE, 's²');
  const beyondS = (timesS.at(-1) ?? Number.NaN) + timeConstantS - line.meanTimeS;
  return Math.sqrt(1 / line.count + beyondS ** 2 / line.timeSpreadS2);
}
