import { requireInRange } from '../../result/index.ts';
import type { EquilibriumCurve } from './equilibrium-curve.ts';
import { simpson } from './simpson.ts';
import { potBelowStages } from './step-plates.ts';

/** A batch kept at one distillate strength by raising the reflux. */
export interface ConstantCompositionBatch {
  readonly equilibrium: EquilibriumCurve;
  /** Amount charged, > 0 [mol]. */
  readonly chargeMol: number;
  /** Ethanol in the pot at the beginning [mol/mol]. */
  readonly potMoleFraction: number;
  /** Ethanol in the distillate, kept the same, below the azeotrope [mol/mol]. */
  readonly distillateMoleFraction: number;
  /** Equilibrium stages, the pot counted, 1 … 100; fractions allowed. */
  readonly stages: number;
  /** Reflux ratio at which it ends [mol/mol]. */
  readonly endRefluxRatio: number;
}

/** Course and yield of such a batch. */
export interface ConstantCompositionYield {
  readonly startRefluxRatio: number;
  readonly endPotMoleFraction: number;
  readonly distillateMol: number;
  /** ∫ R dD: liquid led back in the whole run [mol]. */
  readonly refluxMol: number;
}

/**
 * Batch rectification at constant distillate composition with rising reflux.
 * Ethanol balance `D = F (x_F − x)/(x_D − x)`; the reflux that keeps `x_D` over pot liquid x from McCabe–Thiele
 * steps; reflux liquid `∫ R dD` by Simpson's rule in D. No hold-up.
 *
 * @param batch compositions 0 < pot < distillate < azeotrope [mol/mol], `stages` 1 … 100, reflux 0 … 1e4 [mol/mol]
 * @returns reflux at the beginning, pot composition at the end, distillate and reflux liquid [mol]
 * @throws OutOfRangeError outside these ranges, or when even the end reflux cannot make the distillate
 *
 * Source: Bogart, Trans. AIChE 33 (1937) 139 (from memory); Coulson & Richardson, Chemical Engineering vol. 2,
 * example 11.12.
 * @example
 * const equilibrium = (x) => (9 * x) / (1 + 8 * x);
 * const batch = { equilibrium, chargeMol: 100, potMoleFraction: 0.5, distillateMoleFraction: 0.9, stages: 1, endRefluxRatio: 0 };
 * constantCompositionBatch(batch).distillateMol // ≈ 0 ± 1e-6
 */
export function constantCompositionBatch(
  batch: ConstantCompositionBatch,
): ConstantCompositionYield {
  const { equilibrium, chargeMol, potMoleFraction: xStart, stages, endRefluxRatio } = batch;
  const xD = batch.distillateMoleFraction;
  requireInRange('charge', chargeMol, 1e-9, 1e12, 'mol');
  requireInRange('ethanol in the pot', xStart, 1e-6, xD - 1e-6, 'mol/mol');
  requireInRange('stages', stages, 1, 100, '');
  requireInRange('reflux ratio at the end', endRefluxRatio, 0, 1e4, 'mol/mol');
  const potAt = (refluxRatio: number) => potBelowStages(equilibrium, xD, refluxRatio, stages);
  const endPotMoleFraction = potAt(endRefluxRatio);
  requireInRange(
    'pot composition that the end reflux serves',
    endPotMoleFraction,
    0,
    xStart,
    'mol/mol',
  );
  const refluxFor = (x: number) => refluxRatioFor(x, potAt, endRefluxRatio);
  const distillateMol = (chargeMol * (xStart - endPotMoleFraction)) / (xD - endPotMoleFraction);
  const refluxMol = simpson(
    // The pot's composition when D has come over, from the ethanol balance.
    (taken) => refluxFor((chargeMol * xStart - taken * xD) / (chargeMol - taken)),
    0,
    distillateMol,
    60,
  );
  return { startRefluxRatio: refluxFor(xStart), endPotMoleFraction, distillateMol, refluxMol };
}

function refluxRatioFor(
  potMoleFraction: number,
  potAt: (refluxRatio: number) => number,
  highest: number,
): number {
  let low = 0;
  let high = highest;
  for (let step = 0; step < 45; step++) {
    const middle = (low + high) / 2;
    if (potAt(middle) > potMoleFraction) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
