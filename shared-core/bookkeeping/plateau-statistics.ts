import { azeotrope } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import type { Quantity } from './quantity.ts';

/** A head temperature at a time. */
export interface HeadPoint {
  readonly timeS: number;
  readonly temperatureC: number;
}

/** A stretch of a run. */
export interface TimeSpan {
  readonly fromS: number;
  readonly toS: number;
}

/**
 * The longest stretch in which the head stays within a band: the method of two pointers over the extremes. This is
 * what an eye does with a ruler on the plot, and like it knows nothing of composition.
 *
 * @param points in order of timeS [s], temperatureC [°C]
 * @param bandK height of the band [K], > 0
 * @returns the stretch [s]; null without two points
 * @throws OutOfRangeError for a band that is not positive
 *
 * Source: common practice, no source.
 * @example
 * const points = [20, 60, 78.1, 78.2, 78.3, 78.2, 84, 90].map((temperatureC, index) => ({ timeS: 60 * index, temperatureC }));
 * longestPlateau(points, 0.5) // => { "fromS": 120, "toS": 300 }
 */
export function longestPlateau(points: readonly HeadPoint[], bandK: number): TimeSpan | null {
  requireInRange('band', bandK, Number.MIN_VALUE, 1000, 'K');
  const highest: number[] = [];
  const lowest: number[] = [];
  const at = (index: number | undefined) => points[index ?? -1]?.temperatureC ?? 0;
  let best: TimeSpan | null = null;
  let start = 0;
  points.forEach(({ timeS, temperatureC }, index) => {
    while (highest.length > 0 && at(highest.at(-1)) <= temperatureC) highest.pop();
    while (lowest.length > 0 && at(lowest.at(-1)) >= temperatureC) lowest.pop();
    highest.push(index);
    lowest.push(index);
    while (at(highest[0]) - at(lowest[0]) > bandK) {
      start += 1;
      if ((highest[0] ?? 0) < start) highest.shift();
      if ((lowest[0] ?? 0) < start) lowest.shift();
    }
    const fromS = points[start]?.timeS ?? timeS;
    if (index > start && timeS - fromS > (best === null ? 0 : best.toS - best.fromS)) {
      best = { fromS, toS: timeS };
    }
  });
  return best;
}

/** What the readings on a plateau say. */
export interface PlateauStatistics {
  readonly span: TimeSpan;
  readonly readings: number;
  readonly meanC: number;
  readonly medianC: number;
  readonly standardDeviationK: number;
  /** Scatter of the mean alone, neighbours being alike; the probe's own uncertainty is not in it. */
  readonly standardUncertaintyOfMeanK: number;
  readonly lowestC: number;
  readonly highestC: number;
  /** Slope of the least-squares line. */
  readonly driftKPerH: Quantity;
}

/**
 * Mean, scatter and drift of the head on a plateau.
 *
 * Neighbouring readings are alike, so n of them are worth `n_eff = n (1 − r)/(1 + r)`, r the correlation of
 * neighbours (0 … 0.999); then `u(mean) = s/√n_eff` and the slope's uncertainty grows by `√(n/n_eff)`.
 *
 * @param points at least 3, in order of timeS [s], temperatureC [°C]
 * @returns temperatures [°C], differences [K], drift [K/h]
 * @throws OutOfRangeError for fewer points or no time between them
 *
 * Source: JCGM 100:2008, 4.2.3 (mean) and 4.2.7 (correlated readings); n_eff for a first-order process, e.g.
 * N. F. Zhang, Metrologia 43 (2006) S276 (from memory).
 * @example
 * const points = [78.1, 78.3, 78.2, 78.4, 78.3].map((temperatureC, index) => ({ timeS: 900 * index, temperatureC }));
 * plateauStatistics(points).meanC // ≈ 78.26 ± 1e-9
 * plateauStatistics(points).driftKPerH.value // ≈ 0.2 ± 1e-9
 */
export function plateauStatistics(points: readonly HeadPoint[]): PlateauStatistics {
  const count = points.length;
  requireInRange('number of readings', count, 3, Number.MAX_SAFE_INTEGER, '');
  const fromS = points[0]?.timeS ?? 0;
  const toS = points[count - 1]?.timeS ?? 0;
  requireInRange('length of the plateau', toS - fromS, 1e-3, 1e9, 's');
  const temperatures = points.map(({ temperatureC }) => temperatureC);
  const meanC = mean(temperatures);
  const meanS = mean(points.map(({ timeS }) => timeS));
  let [timeSquares, products, squares, neighbours] = [0, 0, 0, 0];
  let before = 0;
  for (const { timeS, temperatureC } of points) {
    const [fromMeanS, fromMeanK] = [timeS - meanS, temperatureC - meanC];
    timeSquares += fromMeanS ** 2;
    products += fromMeanS * fromMeanK;
    squares += fromMeanK ** 2;
    neighbours += before * fromMeanK;
    before = fromMeanK;
  }
  const standardDeviationK = Math.sqrt(squares / (count - 1));
  const alike = squares > 0 ? Math.min(0.999, Math.max(0, neighbours / squares)) : 0;
  const effective = Math.max(1, (count * (1 - alike)) / (1 + alike));
  const slope = products / timeSquares;
  const residual = Math.max(0, squares - slope * products) / Math.max(1, count - 2);
  const sorted = temperatures.toSorted((a, b) => a - b);
  return {
    span: { fromS, toS },
    readings: count,
    meanC,
    medianC: ((sorted[(count - 1) >> 1] ?? 0) + (sorted[count >> 1] ?? 0)) / 2,
    standardDeviationK,
    standardUncertaintyOfMeanK: standardDeviationK / Math.sqrt(effective),
    lowestC: sorted[0] ?? meanC,
    highestC: sorted[count - 1] ?? meanC,
    driftKPerH: {
      value: 3600 * slope,
      standardUncertainty: 3600 * Math.sqrt((residual / timeSquares) * (count / effective)),
    },
  };
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * A plateau as it would read at 101.325 kPa: `T_std = T + T_az(101.325) − T_az(p)`. The distance to the azeotrope hardly
 * depends on pressure, so the same vapour is moved, not merely the reading.
 *
 * @param plateau temperatureC [°C], −50 … 150; pressureKPa [kPa], 20 … 200
 * @returns temperature [°C]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: this project's equilibrium model, see `azeotrope`; 90 % vol vapour lies 1.0 … 1.1 K above the azeotrope
 * from 70 to 104 kPa.
 * @example
 * atStandardPressureC({ temperatureC: 77.4, pressureKPa: 98.6 }) // ≈ 78.08 ± 0.03
 * atStandardPressureC({ temperatureC: 78.2, pressureKPa: 101.325 }) // ≈ 78.2 ± 1e-9
 */
export function atStandardPressureC(plateau: {
  readonly temperatureC: number;
  readonly pressureKPa: number;
}): number {
  const { temperatureC, pressureKPa } = plateau;
  requireInRange('plateau temperature', temperatureC, -50, 150, '°C');
  return temperatureC + azeotrope(101.325).temperatureC - azeotrope(pressureKPa).temperatureC;
}
