import type { Estimate } from '../uncertainty/index.ts';
import { weightedQuantiles } from '../uncertainty/index.ts';

/** Median with the ends of the central 90 % of weighted values. */
export function weightedEstimate(values: ArrayLike<number>, weights: ArrayLike<number>): Estimate {
  const [low = 0, value = 0, high = 0] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95]);
  return { value, low, high };
}

export interface Moments {
  readonly mean: number;
  readonly sd: number;
}

export function weightedMoments(values: ArrayLike<number>, weights: ArrayLike<number>): Moments {
  let total = 0;
  let mean = 0;
  for (let index = 0; index < values.length; index += 1) {
    total += weights[index] as number;
    mean += (values[index] as number) * (weights[index] as number);
  }
  mean /= total;
  let variance = 0;
  for (let index = 0; index < values.length; index += 1) {
    variance += (weights[index] as number) * ((values[index] as number) - mean) ** 2;
  }
  return { mean, sd: Math.sqrt(variance / total) };
}
