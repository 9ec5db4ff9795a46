import { requireInRange } from '../../result/index.ts';
import type { EquilibriumCurve } from './equilibrium-curve.ts';
import { simpson } from './simpson.ts';

/** Where a batch distillation begins and ends. */
export interface BatchSpan {
  readonly equilibrium: EquilibriumCurve;
  /** Amount charged, > 0 [mol]. */
  readonly chargeMol: number;
  /** Ethanol in the pot at the beginning, 0 … 1 [mol/mol]. */
  readonly potMoleFraction: number;
  /** Ethanol in the pot at the end, less than at the beginning [mol/mol]. */
  readonly endPotMoleFraction: number;
}

/** What a batch distillation leaves and gives. */
export interface BatchYield {
  /** ∫ dx/(y − x), the logarithm of charge over residue. */
  readonly integral: number;
  readonly residueMol: number;
  readonly distillateMol: number;
  /** Mean of all distillate [mol/mol]. */
  readonly distillateMoleFraction: number;
}

const intervals = 400;

/**
 * Simple batch distillation: no column, all vapour taken off. Rayleigh's equation,
 * `ln(F/W) = ∫ dx/(y*(x) − x)` from end to beginning, by Simpson's rule in ln x.
 *
 * @param span equilibrium curve, charge [mol] > 0, pot compositions 0 < end < beginning < azeotrope [mol/mol]
 * @returns residue and distillate [mol], mean composition [mol/mol]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: Lord Rayleigh, Phil. Mag. 4 (1902) 521; example: Perry's Handbook, section 13, Batch Distillation.
 * @example
 * const span = { equilibrium: equilibriumCurve(101.3), chargeMol: 100, potMoleFraction: 0.18, endPotMoleFraction: 0.06 };
 * simpleBatch(span).residueMol // ≈ 70 ± 1.4
 * simpleBatch(span).distillateMoleFraction // ≈ 0.46 ± 0.01
 */
export function simpleBatch(span: BatchSpan): BatchYield {
  const { equilibrium, chargeMol, potMoleFraction, endPotMoleFraction } = span;
  requireInRange('charge', chargeMol, 1e-9, 1e12, 'mol');
  requireInRange('ethanol in the pot', potMoleFraction, 1e-6, 1, 'mol/mol');
  requireInRange(
    'ethanol in the pot at the end',
    endPotMoleFraction,
    1e-6,
    potMoleFraction,
    'mol/mol',
  );
  const integral = simpson(
    (logX) => {
      const x = Math.exp(logX);
      const gain = equilibrium(x) - x;
      requireInRange('enrichment (below the azeotrope)', gain, 1e-9, 1, 'mol/mol');
      return x / gain;
    },
    Math.log(endPotMoleFraction),
    Math.log(potMoleFraction),
    intervals,
  );
  const residueMol = chargeMol * Math.exp(-integral);
  const distillateMol = chargeMol - residueMol;
  const ethanolMol = chargeMol * potMoleFraction - residueMol * endPotMoleFraction;
  return {
    integral,
    residueMol,
    distillateMol,
    distillateMoleFraction: distillateMol > 0 ? ethanolMol / distillateMol : 0,
  };
}
