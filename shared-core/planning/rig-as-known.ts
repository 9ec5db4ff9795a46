import { type Rig, teachingRigs } from '../column/index.ts';
import type { RigSetting } from '../run/index.ts';
import { type PlanUncertainty, usualPlanUncertainty } from './plan-request.ts';

/** Glassware as far as a person knows it, and how far the rest may be off. */
export interface KnownRig {
  readonly rig: Rig;
  readonly uncertainty: PlanUncertainty;
}

/** Middle of the column while the main fraction comes over, above a room of 20 °C [K]. */
const columnAboveRoomK = 62;
/** Where nothing is known: common practice, no source. */
const unknown = { platesShare: 0.35, lossShare: 0.35, heatShare: 0.2 };

/**
 * A rig from what the person stated, rule by rule: a stated number is used, an unknown one is taken from a column
 * of glass beads, or from a bare still head where there are no plates, and its uncertainty widened; `column loss [W] = k × 62 K`.
 *
 * @param known plates [number] 0 … 40, heat [W] 5 … 5000, loss of the column [W] 0 … 1000 (taken as at most 310); null
 * where unknown
 * @returns the rig with standard uncertainties for a plan
 *
 * Source: losses and heat capacities of the teaching rigs, from memory.
 * @example
 * rigAsKnown({ description: '', plates: 6, heatW: null, columnLossW: 31 }).rig.column.lossWPerK // ≈ 0.5 ± 1e-9
 * rigAsKnown({ description: '', plates: null, heatW: 90, columnLossW: null }).uncertainty.platesShare // => 0.35
 * rigAsKnown({ description: '', plates: 0, heatW: null, columnLossW: null }).rig.column.holdUpMl // => 0.3
 */
export function rigAsKnown(known: RigSetting): KnownRig {
  const { plates, heatW, columnLossW, description } = known;
  const usual = plates === 0 ? teachingRigs.simpleHead : teachingRigs.glassBeads;
  const lossWPerK =
    columnLossW === null ? usual.column.lossWPerK : Math.min(columnLossW / columnAboveRoomK, 5);
  return {
    rig: {
      ...usual,
      description,
      plates: plates ?? usual.plates,
      column: { ...usual.column, lossWPerK },
      heater: { ...usual.heater, powerW: heatW ?? usual.heater.powerW },
    },
    uncertainty: {
      ...usualPlanUncertainty,
      ...(plates === null && { platesShare: unknown.platesShare }),
      ...(columnLossW === null && { lossShare: unknown.lossShare }),
      ...(heatW === null && { heatShare: unknown.heatShare }),
    },
  };
}
