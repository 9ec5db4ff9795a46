import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/**
 * Mole fractions of an estimated strength, end by end: the two rise together, so intervals keep their ends.
 *
 * @param strengthAbv value and interval [% vol], cut to 0 … 100
 * @returns value and interval [mol/mol]
 * @example
 * moleFractionEstimate({ value: 40, low: 40, high: 40 }).value // ≈ 0.1634 ± 0.0005
 */
export function moleFractionEstimate(strengthAbv: Estimate): Estimate {
  const moleFractionAt = (abv: number) => moleFractionFromStrength(Math.min(100, Math.max(0, abv)));
  return {
    value: moleFractionAt(strengthAbv.value),
    low: moleFractionAt(strengthAbv.low),
    high: moleFractionAt(strengthAbv.high),
  };
}
