import { moleFractionFromStrength } from '../alcoholometry/index.ts';
import type { RigSetting } from '../run/index.ts';
import { enthalpyOfVaporizationJPerMol, molarVolumeMlPerMol } from '../thermo/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/** What tells how much liquid runs back down the column. */
export interface RefluxClues {
  readonly rig: RigSetting;
  /** Distillate at present [mL/min]. */
  readonly dripRateMlPerMin: Estimate | null;
  /** Its strength [% vol]. */
  readonly headStrengthAbv: number;
}

/** Reflux ratio with what it was worked out from. */
export interface RefluxEstimate {
  /** Liquid going back per distillate [mol/mol]. */
  readonly refluxRatio: Estimate;
  readonly basis: 'column-loss' | 'heat';
}

/** How well a column's heat loss is usually known, as a share; common practice, no source. */
const columnLossDoubt = 0.2;
/** Share of the heater's power that becomes vapour in an open teaching rig; common practice, no source. */
const heatIntoVapour = { low: 0.5, value: 0.7, high: 0.9 };

/**
 * Reflux ratio at present. With the column's heat loss known, what it condenses runs back: `R = Q/(ΔH·D)`.
 * With only the heater's power known, all vapour that is not distillate does: `R = η P/(ΔH·D) − 1`.
 *
 * @param clues rig [W], drip rate [mL/min] > 0, strength of the distillate [% vol] 0 … 100
 * @returns reflux ratio with a range that takes the ends together; null when rate or both heats are not known
 *
 * Source: heat balance over the column, our own derivation; ΔH as `enthalpyOfVaporizationJPerMol`.
 * @example
 * const rig = { description: '', plates: null, heatW: null, columnLossW: 35 };
 * presentReflux({ rig, dripRateMlPerMin: { value: 0.9, low: 0.8, high: 1 }, headStrengthAbv: 92 }).refluxRatio.value // ≈ 2.79 ± 0.03
 * presentReflux({ rig, dripRateMlPerMin: null, headStrengthAbv: 92 }) // => null
 */
export function presentReflux(clues: RefluxClues): RefluxEstimate | null {
  const { rig, dripRateMlPerMin: rate } = clues;
  if (rate === null || !(rate.low > 0)) return null;
  const dutyWPerMlPerMin = vaporizationJPerMl(clues.headStrengthAbv) / 60;
  if (rig.columnLossW !== null) {
    const ratioAt = (lossW: number, mlPerMin: number) => lossW / (dutyWPerMlPerMin * mlPerMin);
    return {
      basis: 'column-loss',
      refluxRatio: {
        value: ratioAt(rig.columnLossW, rate.value),
        low: ratioAt(rig.columnLossW * (1 - columnLossDoubt), rate.high),
        high: ratioAt(rig.columnLossW * (1 + columnLossDoubt), rate.low),
      },
    };
  }
  if (rig.heatW === null) return null;
  const heatW = rig.heatW;
  const ratioAt = (share: number, mlPerMin: number) =>
    Math.max(0, (share * heatW) / (dutyWPerMlPerMin * mlPerMin) - 1);
  return {
    basis: 'heat',
    refluxRatio: {
      value: ratioAt(heatIntoVapour.value, rate.value),
      low: ratioAt(heatIntoVapour.low, rate.high),
      high: ratioAt(heatIntoVapour.high, rate.low),
    },
  };
}

/** Heat to vaporize one mL, measured at 20 °C, of distillate, near 78.5 °C where teaching stills work. */
function vaporizationJPerMl(strengthAbv: number): number {
  const x = moleFractionFromStrength(strengthAbv);
  const perMol =
    x * enthalpyOfVaporizationJPerMol('ethanol', 78.5) +
    (1 - x) * enthalpyOfVaporizationJPerMol('water', 78.5);
  return perMol / molarVolumeMlPerMol(x);
}
