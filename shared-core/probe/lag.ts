import { requireInRange } from '../result/index.ts';

/**
 * Time constant of a first-order probe from its 90 % response time: `τ = t90 / ln 10`.
 *
 * @param t90S time to show 90 % of a step [s], 0 … 600
 * @returns time constant [s]
 * @throws OutOfRangeError outside this range
 *
 * Source: step response of a first-order system, `1 − e^(−t/τ) = 0.9`.
 *
 * @example
 * lagTimeConstantS(15) // ≈ 6.514 ± 0.001
 */
export function lagTimeConstantS(t90S: number): number {
  requireInRange('response time t90', t90S, 0, 600, 's');
  return t90S / Math.LN10;
}
