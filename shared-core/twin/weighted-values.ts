import type { Estimate } from '../uncertainty/index.ts';
import { weightedQuantiles } from '../uncertainty/index.ts';

/** Median with the ends of the central 90 % of weighted values. */
export function weightedEstimate(values: readonly number[], weights: readonly number[]): Estimate {
  const [low = 0, value = 0, high = 0] = weightedQuantiles(values, weights, [0.05, 0.5, 0.95]);
  return { value, low, high };
}

export interface Moments {
  readonly mean: number;
  readonly sd: number;
}

export function weightedMoments(values: readonly number[], weights: readonly number[]): Moments {
  let total = 0;
  let mean = 0;
  values.forEach((value, index) => {
    total += weights[index] as number;
    mean += value * (weights[index] as number);
  });
  mean /= total;
  let variance = 0;
  values.forEach((value, index) => {
    variance += (weights[index] as number) * (value - mean) ** 2;
  });
  return { mean, sd: Math.sqrt(variance / total) };
}
