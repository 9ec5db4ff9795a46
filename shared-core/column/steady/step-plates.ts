import { requireInRange } from '../../result/index.ts';
import type { EquilibriumCurve } from './equilibrium-curve.ts';
import { liquidUnderVapour } from './liquid-under-vapour.ts';

/** A rectifying column at steady state, without hold-up and with equal molar flows (McCabe–Thiele). */
export interface RectifyingColumn {
  readonly equilibrium: EquilibriumCurve;
  /** Ethanol in the distillate, 0 … 1 [mol/mol]. */
  readonly distillateMoleFraction: number;
  /** Ethanol in the pot's liquid, below the distillate's, 0 … 1 [mol/mol]. */
  readonly potMoleFraction: number;
  /** Reflux per distillate, 0 … 1e6 [mol/mol]. */
  readonly refluxRatio: number;
}

/** The steps of the diagram. */
export interface PlateSteps {
  /** Equilibrium stages including the pot, with the fraction of the last; null when a pinch is in the way. */
  readonly stages: number | null;
  /** Liquid composition on each stage, from the top down; the last at or below the pot's. */
  readonly liquids: readonly number[];
}

const mostStages = 200;
/** A step smaller than this is a pinch. */
const leastStep = 1e-7;

/**
 * Theoretical stages between pot and distillate, stepped off from the top: `x_n` from `y_n = y*(x_n)`, then the
 * operating line `y_(n+1) = R/(R + 1) x_n + x_D/(R + 1)`.
 *
 * @param column equilibrium curve, compositions [mol/mol] between 0 and 1, reflux ratio [mol/mol] 0 … 1e6
 * @returns stages, the pot counted; null when no number of stages reaches the pot's composition
 * @throws OutOfRangeError for compositions outside 0 … 1 or a pot richer than the distillate
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605.
 * @example
 * const equilibrium = (x) => (2 * x) / (1 + x);
 * stepPlates({ equilibrium, distillateMoleFraction: 0.5, potMoleFraction: 1 / 3, refluxRatio: 0 }).stages // ≈ 1 ± 1e-9
 */
export function stepPlates(column: RectifyingColumn): PlateSteps {
  const { equilibrium, distillateMoleFraction, potMoleFraction, refluxRatio } = column;
  requireInRange('ethanol in the distillate', distillateMoleFraction, 0, 1, 'mol/mol');
  requireInRange('ethanol in the pot', potMoleFraction, 0, distillateMoleFraction, 'mol/mol');
  requireInRange('reflux ratio', refluxRatio, 0, 1e6, 'mol/mol');
  const liquids: number[] = [];
  let previous = distillateMoleFraction;
  let y = distillateMoleFraction;
  while (liquids.length < mostStages) {
    const x = liquidUnderVapour(equilibrium, y);
    liquids.push(x);
    if (x <= potMoleFraction + 1e-12) {
      const share = (previous - potMoleFraction) / (previous - x);
      return { stages: liquids.length - 1 + share, liquids };
    }
    if (previous - x < leastStep) break;
    previous = x;
    y = (refluxRatio * x + distillateMoleFraction) / (refluxRatio + 1);
  }
  return { stages: null, liquids };
}

/**
 * Liquid of the pot [mol/mol] after this many stages from the top down, by the steps of {@link stepPlates}: equilibrium curve and
 * operating line `y = (R x + x_D)/(R + 1)` in turn; a part of the last stage counts linearly.
 *
 * @param equilibrium vapour over liquid [mol/mol]
 * @param distillateMoleFraction [mol/mol], 0 < x_D < 1
 * @param refluxRatio [mol/mol], ≥ 0
 * @param stages theoretical stages [1], ≥ 0
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605 (from memory).
 *
 * @example
 * const ideal = (x) => (3 * x) / (1 + 2 * x);
 * potBelowStages(ideal, 0.75, 0, 1) // ≈ 0.5 ± 1e-6
 */
export function potBelowStages(
  equilibrium: EquilibriumCurve,
  distillateMoleFraction: number,
  refluxRatio: number,
  stages: number,
): number {
  let above = distillateMoleFraction;
  let y = distillateMoleFraction;
  for (let left = stages; left > 0; left -= 1) {
    const x = liquidUnderVapour(equilibrium, y);
    if (left <= 1) return above + left * (x - above);
    above = x;
    y = (refluxRatio * x + distillateMoleFraction) / (refluxRatio + 1);
  }
  return above;
}

/**
 * Distillate [mol/mol] over a pot with this many stages, the pot counted: the inverse of {@link potBelowStages}, solved by bisection.
 *
 * @param equilibrium vapour over liquid [mol/mol]
 * @param potMoleFraction [mol/mol], 0 < x < 1
 * @param refluxRatio [mol/mol], ≥ 0
 * @param stages theoretical stages [1], ≥ 0
 *
 * Source: as for {@link potBelowStages}.
 *
 * @example
 * const ideal = (x) => (3 * x) / (1 + 2 * x);
 * distillateAboveStages(ideal, 0.5, 0, 1) // ≈ 0.75 ± 1e-6
 */
export function distillateAboveStages(
  equilibrium: EquilibriumCurve,
  potMoleFraction: number,
  refluxRatio: number,
  stages: number,
): number {
  let low = potMoleFraction;
  let high = 1;
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    // Beyond the azeotrope steps lead upwards: too rich a distillate.
    if (potBelowStages(equilibrium, middle, refluxRatio, stages) < potMoleFraction) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
