import { requireInRange } from '../result/index.ts';
import { type BudgetLine, combineContributions, type Distribution } from '../uncertainty/index.ts';
import type { ProbeBudgetSetup } from './probe-budget-setup.ts';
import { probeDoubts } from './probe-doubts.ts';

/** One line of the budget, ready to be read. */
export interface ProbeBudgetComponent {
  readonly name: string;
  readonly distribution: Distribution;
  readonly standardUncertaintyK: number;
  /** K per unit of the input. */
  readonly sensitivity: number;
  /** Part of the combined variance, 0 … 1. */
  readonly share: number;
  readonly sentence: string;
}

/** How well a head temperature is known, and why. */
export interface ProbeBudget {
  /** Largest first. */
  readonly components: readonly ProbeBudgetComponent[];
  readonly combinedStandardUncertaintyK: number;
  readonly coverageFactor: 2;
  readonly expandedUncertaintyK: number;
  readonly sentence: string;
}

/**
 * Uncertainty budget of a head reading: `u² = Σ (cᵢ uᵢ)²`, `U = 2 u`, over sensor tolerance or calibration, drift, smallest
 * step, noise, lag, heat along the stem, leads and cold junction.
 *
 * @param setup temperature [°C], within the range of {@link sensorToleranceK}; uncertainties, limits and steps [K], ≥ 0; slope
 * [K/s]; resistances [Ω]
 * @throws OutOfRangeError for a negative or missing number
 *
 * Source: JCGM 100:2008, equation (10), 6.2 (expanded uncertainty) and 7.2 (reporting).
 *
 * @example
 * const setup = { temperatureC: 78.2, sensor: { kind: 'platinum', toleranceClass: 'B' }, resolutionK: 0.01, noiseK: 0.03 };
 * probeBudget(setup).expandedUncertaintyK // ≈ 0.81 ± 0.01
 * probeBudget(setup).components[0].name // => "tolerance of the sensor"
 */
export function probeBudget(setup: ProbeBudgetSetup): ProbeBudget {
  requireInRange('temperature', setup.temperatureC, -100, 300, '°C');
  const { lines, combinedStandardUncertainty } = combineContributions(probeDoubts(setup));
  const expandedUncertaintyK = 2 * combinedStandardUncertainty;
  return {
    components: lines.map(component),
    combinedStandardUncertaintyK: combinedStandardUncertainty,
    coverageFactor: 2,
    expandedUncertaintyK,
    sentence: summary(expandedUncertaintyK, lines[0]),
  };
}

function component(line: BudgetLine): ProbeBudgetComponent {
  const { name, distribution, standardUncertainty, sensitivity, share, reason } = line;
  return {
    name,
    distribution,
    standardUncertaintyK: standardUncertainty,
    sensitivity,
    share,
    sentence:
      `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${reason}; ` +
      `counts ${standardUncertainty.toPrecision(2)} °C, ${(100 * share).toFixed(0)} % of the variance.`,
  };
}

function summary(expandedUncertaintyK: number, largest: BudgetLine | undefined): string {
  const known = `The head temperature is known to ± ${expandedUncertaintyK.toPrecision(2)} °C (k = 2, about 95 %).`;
  if (largest === undefined) return known;
  const remedy = remedies[largest.name];
  return `${known} The largest part is the ${largest.name}${remedy ? `: ${remedy}` : ''}.`;
}

/** What a person can do about a doubt that leads the budget. */
const remedies: Readonly<Record<string, string>> = {
  'tolerance of the sensor': 'calibrate at the ice and steam points to remove most of it',
  'lag, not corrected': 'wait until the head holds, or switch the lag correction on',
  'noise of a reading': 'average over a longer window',
  'heat along the stem': 'put the bulb deeper into the vapour and lag the joint',
  'resistance of the leads': 'use three or four wires, or calibrate with these leads',
};
