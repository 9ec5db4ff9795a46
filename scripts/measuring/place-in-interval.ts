import { normalCumulative } from '../../shared-core/monitor/situation/index.ts';

/** An interval that was told: its middle, and its ends. */
export interface ToldInterval {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/**
 * Where a truth falls in what was told of it, 0 … 1 (probability integral transform): half a normal distribution on either
 * side of the value, as wide as the interval's ends say. Of intervals that are right one in ten truths falls in each tenth.
 *
 * Source: A. P. Dawid, J. R. Stat. Soc. A 147 (1984) 278; from memory.
 */
export function placeInInterval(
  truth: number,
  { low, value, high }: ToldInterval,
  endsSds: number,
): number {
  if (truth === value) return 0.5;
  const reach = truth < value ? value - low : high - value;
  return reach <= 0 ? Number(truth > value) : normalCumulative((endsSds * (truth - value)) / reach);
}
