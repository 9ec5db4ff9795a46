import type { Estimate } from '../snapshot/index.ts';

/** Median and the ends of the central 90 % of values; null without any. */
export function estimateFrom(values: readonly number[]): Estimate | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  return {
    value: quantile(sorted, 0.5),
    low: quantile(sorted, 0.05),
    high: quantile(sorted, 0.95),
  };
}

function quantile(sorted: readonly number[], share: number): number {
  const position = share * (sorted.length - 1);
  const below = Math.floor(position);
  const low = sorted[below] as number;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return low + (position - below) * (high - low);
}
