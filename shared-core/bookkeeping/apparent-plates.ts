import {
  type EquilibriumCurve,
  equilibriumCurve,
  fenskeStages,
  stepPlates,
} from '../column/index.ts';
import { azeotrope } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import type { Interval } from '../uncertainty/index.ts';

/** What is known of a column while it delivered a cut. */
export interface ColumnAtWork {
  /** Ethanol in the distillate, with its 95 % interval [mol/mol]. */
  readonly distillateMoleFraction: Interval;
  /** Ethanol in the pot at the time, 0 … 1 [mol/mol]. */
  readonly potMoleFraction: number;
  readonly pressureKPa: number;
  /** Reflux per distillate [mol/mol], 0 … 1e6; null when it was not measured. */
  readonly refluxRatio: number | null;
}

/** A number of stages; `high` is null when even endless stages agree with the distillate. */
export interface CountedStages {
  /** Null when the best value lies at or above the azeotrope, where steps never arrive. */
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** Both ways to count plates, and what tells them apart. */
export interface ApparentPlates {
  /** Equilibrium stages at total reflux, the pot counted, by stepping the curve. */
  readonly stepped: CountedStages;
  /** The same at the reflux ratio measured; null without one. */
  readonly steppedAtReflux: CountedStages | null;
  /** Fenske's formula with one relative volatility, the pot counted; null at or above the azeotrope. */
  readonly fenske: number | null;
  readonly volatilityAtPot: number;
  readonly volatilityAtTop: number;
  /** Geometric mean of both: the one Fenske's formula is given. */
  readonly meanVolatility: number;
  /** Liquid compositions of the steps at total reflux, from the top down [mol/mol]. */
  readonly liquids: readonly number[];
  readonly whyTheyDiffer: string;
}

/** Reflux that counts as total in stepping. */
const totalReflux = 1e6;

/**
 * Apparent number of equilibrium stages of a column from one pair of compositions, counted twice.
 *
 * Stepping takes the curve as it is: `x_n` from `y_n = y*(x_n)`, `y_(n+1) = x_n` at total reflux. Fenske puts one
 * relative volatility for the whole column, `N = ln[(x_D/(1 − x_D))((1 − x_W)/x_W)]/ln α`,
 * `α = √(α_pot α_top)`. They are least numbers: with less than total reflux the same cut needs more plates, and
 * hold-up and a drifting pot (batch!) shift both.
 *
 * @param column distillateMoleFraction and potMoleFraction [mol/mol], 0 < pot < distillate < 1; pressureKPa [kPa],
 * 50 … 110; refluxRatio [mol/mol], 0 … 1e6
 * @returns stages with the pot as the first; plates of the column itself are one less
 * @throws OutOfRangeError outside these ranges
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605; M. R. Fenske, Ind. Eng. Chem. 24 (1932) 482; the
 * geometric mean is common practice, no source.
 * @example
 * const column = { distillateMoleFraction: { value: 0.44, low: 0.43, high: 0.45 }, potMoleFraction: 0.1, pressureKPa: 101.325, refluxRatio: null };
 * apparentPlates(column).stepped.value // ≈ 1 ± 0.05
 * apparentPlates(column).fenske // ≈ 1.3 ± 0.2
 */
export function apparentPlates(column: ColumnAtWork): ApparentPlates {
  const { distillateMoleFraction: distillate, potMoleFraction, pressureKPa, refluxRatio } = column;
  requireInRange('ethanol in the distillate', distillate.value, 1e-9, 1 - 1e-9, 'mol/mol');
  requireInRange('ethanol in the pot', potMoleFraction, 1e-9, distillate.value, 'mol/mol');
  const equilibrium = equilibriumCurve(pressureKPa);
  const volatilityAtPot = volatility(equilibrium, potMoleFraction);
  const volatilityAtTop = volatility(equilibrium, distillate.value);
  const meanVolatility = Math.sqrt(volatilityAtPot * volatilityAtTop);
  const isBelowAzeotrope = distillate.value < azeotrope(pressureKPa).ethanolMoleFraction;
  const fenske =
    isBelowAzeotrope && meanVolatility > 1.001
      ? fenskeStages({
          distillateMoleFraction: distillate.value,
          potMoleFraction,
          relativeVolatility: meanVolatility,
        })
      : null;
  const count = (reflux: number) => countStages(equilibrium, distillate, potMoleFraction, reflux);
  const stepped = count(totalReflux);
  return {
    stepped,
    steppedAtReflux: refluxRatio === null ? null : count(refluxRatio),
    fenske,
    volatilityAtPot,
    volatilityAtTop,
    meanVolatility,
    liquids:
      stepped.value === null
        ? []
        : stepPlates({
            equilibrium,
            distillateMoleFraction: distillate.value,
            potMoleFraction,
            refluxRatio: totalReflux,
          }).liquids,
    whyTheyDiffer: explain(stepped.value, fenske, volatilityAtPot, volatilityAtTop, meanVolatility),
  };
}

function countStages(
  equilibrium: EquilibriumCurve,
  distillate: Interval,
  potMoleFraction: number,
  refluxRatio: number,
): CountedStages {
  const stagesTo = (distillateMoleFraction: number) =>
    distillateMoleFraction <= potMoleFraction
      ? 0
      : stepPlates({ equilibrium, distillateMoleFraction, potMoleFraction, refluxRatio }).stages;
  return {
    value: stagesTo(distillate.value),
    low: stagesTo(Math.max(0, distillate.low)),
    high: stagesTo(Math.min(1, distillate.high)),
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
  const close = `Both count stages at total reflux, the pot included.`;
  const side =
    Math.abs(stepped - fenske) < 0.15
      ? 'Here the errors of taking one value happen to cancel.'
      : `Fenske's formula takes ${mean.toPrecision(3)} everywhere and so gives ` +
        `${fenske > stepped ? 'more' : 'fewer'} stages than the steps, each of which uses its own; trust the steps.`;
  return `${close} ${alphas} ${side}`;
}
