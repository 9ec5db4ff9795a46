import { type EquilibriumCurve, equilibriumCurve, fenskeStages } from '../column/index.ts';
import { type PlateDiagram, plateDiagram, type StageCount } from '../diagram/index.ts';
import { azeotrope } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/** What is known of a column while it delivered a cut. */
export interface ColumnAtWork {
  /** Ethanol in the distillate, with its 95 % interval [mol/mol]. */
  readonly distillateMoleFraction: Estimate;
  /** Ethanol in the pot at the time, with its 95 % interval [mol/mol]. */
  readonly potMoleFraction: Estimate;
  readonly pressureKPa: number;
  /** Reflux per distillate [mol/mol], 0 … 1e6; null when it was not measured. */
  readonly refluxRatio: number | null;
}

/** Both ways to count plates, and what tells them apart. */
export interface ApparentPlates {
  /** Equilibrium stages at total reflux, the pot counted, by stepping the curve. */
  readonly stepped: StageCount;
  /** The same at the reflux ratio measured; null without one. */
  readonly steppedAtReflux: StageCount | null;
  /** Fenske's formula with one relative volatility, the pot counted; null at or above the azeotrope. */
  readonly fenske: number | null;
  readonly volatilityAtPot: number;
  readonly volatilityAtTop: number;
  /** Geometric mean of both: the one Fenske's formula is given. */
  readonly meanVolatility: number;
  /** Lines and steps to draw, at total reflux. */
  readonly diagram: PlateDiagram | null;
  readonly whyTheyDiffer: string;
}

const unknownStages: StageCount = { value: null, low: null, high: null };

function withinUnity({ value, low, high }: Estimate): Estimate {
  return { value, low: Math.max(1e-9, low), high: Math.min(1, high) };
}

/**
 * Apparent number of equilibrium stages of a column from one pair of compositions, counted twice.
 *
 * Stepping takes the curve as it is: `x_n` from `y_n = y*(x_n)`, `y_(n+1) = x_n` at total reflux. Fenske puts one
 * relative volatility for the whole column, `N = ln[(x_D/(1 − x_D))((1 − x_W)/x_W)]/ln α`,
 * `α = √(α_pot α_top)`. They are least numbers: with less than total reflux the same cut needs more plates, and
 * hold-up and a drifting pot (batch!) shift both.
 *
 * @param column distillateMoleFraction and potMoleFraction with intervals [mol/mol], 0 < pot < distillate < 1; pressureKPa [kPa],
 * 50 … 110; refluxRatio [mol/mol], 0 … 1e6
 * @returns stages with the pot as the first; plates of the column itself are one less
 * @throws OutOfRangeError outside these ranges
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605; M. R. Fenske, Ind. Eng. Chem. 24 (1932) 482; the
 * geometric mean is common practice, no source.
 * @example
 * const column = { distillateMoleFraction: { value: 0.44, low: 0.43, high: 0.45 }, potMoleFraction: { value: 0.1, low: 0.1, high: 0.1 }, pressureKPa: 101.325, refluxRatio: null };
 * apparentPlates(column).stepped.value // ≈ 1 ± 0.05
 * apparentPlates(column).fenske // ≈ 1.3 ± 0.2
 */
export function apparentPlates(column: ColumnAtWork): ApparentPlates {
  const { distillateMoleFraction: head, potMoleFraction: pot, pressureKPa, refluxRatio } = column;
  requireInRange('ethanol in the pot', pot.value, 1e-9, 1, 'mol/mol');
  requireInRange('ethanol in the distillate', head.value, pot.value + 1e-5, 1 - 1e-9, 'mol/mol');
  const equilibrium = equilibriumCurve(pressureKPa);
  const volatilityAtPot = volatility(equilibrium, pot.value);
  const volatilityAtTop = volatility(equilibrium, head.value);
  const meanVolatility = Math.sqrt(volatilityAtPot * volatilityAtTop);
  const isBelowAzeotrope = head.value < azeotrope(pressureKPa).ethanolMoleFraction;
  const fenske =
    isBelowAzeotrope && meanVolatility > 1.001
      ? fenskeStages({
          distillateMoleFraction: head.value,
          potMoleFraction: pot.value,
          relativeVolatility: meanVolatility,
        })
      : null;
  const bounded = { head: withinUnity(head), pot: withinUnity(pot), equilibrium };
  const diagram = plateDiagram({ ...bounded, refluxRatio: Number.POSITIVE_INFINITY });
  const stepped = diagram?.stages ?? unknownStages;
  return {
    stepped,
    steppedAtReflux:
      refluxRatio === null
        ? null
        : (plateDiagram({ ...bounded, refluxRatio })?.stages ?? unknownStages),
    fenske,
    volatilityAtPot,
    volatilityAtTop,
    meanVolatility,
    diagram,
    whyTheyDiffer: explain(stepped.value, fenske, volatilityAtPot, volatilityAtTop, meanVolatility),
  };
}

/** α = y(1 − x)/((1 − y)x) over a liquid x. */
function volatility(equilibrium: EquilibriumCurve, x: number): number {
  const y = equilibrium(x);
  return (y * (1 - x)) / ((1 - y) * x);
}

function explain(
  stepped: number | null,
  fenske: number | null,
  atPot: number,
  atTop: number,
  mean: number,
): string {
  const alphas =
    `Relative volatility falls from ${atPot.toPrecision(3)} over the pot to ` +
    `${atTop.toPrecision(3)} over the distillate.`;
  if (stepped === null || fenske === null) {
    return `${alphas} At the azeotrope it is 1: steps never arrive there, and Fenske's formula means nothing.`;
  }
  const close =
    "Steps at total reflux and Fenske's formula count the same stages, the pot among them.";
  const side =
    Math.abs(stepped - fenske) < 0.15
      ? 'Here the errors of taking one value happen to cancel.'
      : `Fenske's formula takes ${mean.toPrecision(3)} everywhere and so gives ` +
        `${fenske > stepped ? 'more' : 'fewer'} stages than the steps, each of which uses its own; trust the steps.`;
  return `${close} ${alphas} ${side}`;
}
