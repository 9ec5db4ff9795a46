import type { Estimate } from '../uncertainty/index.ts';

/** Share of the simulated runs that an interval of the plan holds; common practice, no source. */
export const planCoverage = 0.9;

/** Median and the ends of the central share of values that the plan covers; null without any. */
export function estimateFrom(values: readonly number[]): Estimate | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  return {
    value: quantile(sorted, 0.5),
    low: quantile(sorted, (1 - planCoverage) / 2),
    high: quantile(sorted, (1 + planCoverage) / 2),
  };
}

function quantile(sorted: readonly number[], share: number): number {
  const position = share * (sorted.length - 1);
  const below = Math.floor(position);
  const low = sorted[below] as number;
  const high = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return low + (position - below) * (high - low);
}
