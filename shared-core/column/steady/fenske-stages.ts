import { requireInRange } from '../../result/index.ts';

/**
 * Least number of stages, at total reflux, when the relative volatility is constant (Fenske):
 * `N = ln[(x_D/(1 − x_D))·((1 − x_pot)/x_pot)]/ln α`.
 *
 * Limits: constant α is false for ethanol and water. At 1 atm α falls from about 12 in dilute liquid to 1 at the
 * azeotrope, so any one α misleads; above 0.6 mol/mol the result is worthless. Use it for near-ideal pairs, and
 * {@link stepPlates} with a large reflux ratio for ethanol and water.
 *
 * @param column compositions 0 < pot < distillate < 1 [mol/mol]; `relativeVolatility` > 1 [(mol/mol)/(mol/mol)]
 * @returns equilibrium stages, the pot counted
 * @throws OutOfRangeError outside these ranges
 *
 * Source: M. R. Fenske, Ind. Eng. Chem. 24 (1932) 482.
 * @example
 * fenskeStages({ distillateMoleFraction: 0.8, potMoleFraction: 0.2, relativeVolatility: 4 }) // ≈ 2 ± 1e-9
 */
export function fenskeStages(column: {
  readonly distillateMoleFraction: number;
  readonly potMoleFraction: number;
  readonly relativeVolatility: number;
}): number {
  const { distillateMoleFraction: xD, potMoleFraction: xPot, relativeVolatility } = column;
  requireInRange('ethanol in the distillate', xD, 1e-12, 1 - 1e-12, 'mol/mol');
  requireInRange('ethanol in the pot', xPot, 1e-12, xD, 'mol/mol');
  requireInRange('relative volatility', relativeVolatility, 1 + 1e-9, 1e6, '');
  return Math.log((xD / (1 - xD)) * ((1 - xPot) / xPot)) / Math.log(relativeVolatility);
}
