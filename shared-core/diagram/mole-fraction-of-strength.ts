import {
  massFractionFromAlcoholByVolume,
  moleFractionFromMassFraction,
} from '../alcoholometry/index.ts';
import type { Estimate } from '../snapshot/index.ts';

/** Ethanol mole fraction of a strength in % vol; the two rise together, so intervals keep their ends. */
export function moleFractionOfStrength(alcoholByVolume: number): number {
  const bounded = Math.min(100, Math.max(0, alcoholByVolume));
  return moleFractionFromMassFraction(
    massFractionFromAlcoholByVolume({ alcoholByVolume: bounded }),
  );
}

/**
 * Mole fractions of an estimated strength, end by end.
 *
 * @param strengthAbv value and interval [% vol], cut to 0 … 100
 * @returns value and interval [mol/mol]
 * @example
 * moleFractionEstimate({ value: 40, low: 40, high: 40 }).value // ≈ 0.1634 ± 0.0005
 */
export function moleFractionEstimate(strengthAbv: Estimate): Estimate {
  return {
    value: moleFractionOfStrength(strengthAbv.value),
    low: moleFractionOfStrength(strengthAbv.low),
    high: moleFractionOfStrength(strengthAbv.high),
  };
}
