import type { Estimate } from '../snapshot/index.ts';

/** Median with the ends of the central 90 % of weighted values. */
export function weightedEstimate(values: readonly number[], weights: readonly number[]): Estimate {
  const order = values
    .map((_, index) => index)
    .sort((a, b) => (values[a] as number) - (values[b] as number));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const at = (share: number): number => {
    let sum = 0;
    for (const index of order) {
      sum += (weights[index] as number) / total;
      if (sum >= share) return values[index] as number;
    }
    return values[order[order.length - 1] as number] as number;
  };
  return { value: at(0.5), low: at(0.05), high: at(0.95) };
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
