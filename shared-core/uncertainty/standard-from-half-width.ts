import { requireInRange } from '../result/index.ts';
import type { Distribution } from './contribution.ts';

/**
 * Standard uncertainty from limits `± a`: rectangular `u = a/√3`, triangular `u = a/√6`, and for a normal
 * spread `u = a/2`, the limits being read as expanded with k = 2.
 *
 * @param halfWidth half the distance between the limits [any unit], ≥ 0; the result has the same unit
 * @throws OutOfRangeError when negative, infinite or NaN
 *
 * Source: JCGM 100:2008, 4.3.7 (rectangular), 4.3.9 (triangular), 4.3.3 (stated multiple k).
 *
 * @example
 * standardFromHalfWidth('rectangular', 0.3) // ≈ 0.17321 ± 1e-5
 * standardFromHalfWidth('normal', 0.3) // => 0.15
 */
export function standardFromHalfWidth(distribution: Distribution, halfWidth: number): number {
  requireInRange('half width', halfWidth, 0, Number.MAX_VALUE, 'units');
  return halfWidth / divisors[distribution];
}

const divisors: Readonly<Record<Distribution, number>> = {
  normal: 2,
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
};
