import { coverageFactor90 } from './coverage-factor.ts';

/**
 * Standard uncertainty of a value by its 90 % interval: `u = (high − low)/(2 · 1.645)`.
 *
 * @param interval its ends, low ≤ high [any unit]; the result has the same unit
 *
 * Source: JCGM 100:2008, 4.3.4 and table G.1.
 * @example
 * standardFromNinety({ low: 9.6, high: 10.4 }) // ≈ 0.2432 ± 1e-4
 */
export function standardFromNinety({
  low,
  high,
}: {
  readonly low: number;
  readonly high: number;
}): number {
  return (high - low) / 2 / coverageFactor90;
}
