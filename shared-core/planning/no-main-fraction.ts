import { moleFractionFromStrength, strengthFromMoleFraction } from '../alcoholometry/index.ts';
import {
  distillateAboveStages,
  type EquilibriumCurve,
  equilibriumCurve,
  heaterPowerForRefluxW,
  potBelowStages,
  stepPlates,
} from '../column/index.ts';
import type { PlanRequest } from './plan-request.ts';
import type { NoMainFractionCause, Remedies } from './run-plan.ts';

/** A remedy must also serve the pot when a quarter of its ethanol has gone, or the fraction is over at once. */
const depletedShare = 0.75;
/** More reflux than this nobody waits for: a charge that needs it is too weak. */
const mostReflux = 6;
/** Reflux beyond which more changes nothing. */
const totalReflux = 1e5;
/** A column brings reflux that a bare still head has not; common practice, no source. */
const columnReflux = 3;
/** Heat loss feeds the reflux in along the column, where it does less than at its top. */
const refluxMargin = 1.3;

/** Why a rig gives no main fraction, and what would help. */
export interface NoMainFraction {
  readonly cause: NoMainFractionCause;
  readonly neededRefluxRatio: number | null;
  readonly remedies: Remedies;
}

/** Reads cause and remedies off the McCabe–Thiele construction for the present reflux. */
export function noMainFraction(request: PlanRequest, refluxRatio: number): NoMainFraction {
  const { rig, charge } = request;
  const equilibrium = equilibriumCurve(request.pressureKPa);
  const stages = rig.plates + 1;
  const limit = moleFractionFromStrength(request.leastStrengthAbv);
  const pot = depletedShare * moleFractionFromStrength(charge.strengthAbv);
  const neededRefluxRatio = refluxFor(equilibrium, limit, pot, stages);
  const refluxToSet = Math.min((neededRefluxRatio ?? totalReflux) * refluxMargin, mostReflux);
  const usefulReflux = refluxRatio / refluxMargin;
  const potNeeded = potBelowStages(equilibrium, limit, usefulReflux, stages) / depletedShare;
  const reachable = distillateAboveStages(equilibrium, pot, usefulReflux, stages);
  return {
    cause: causeOf(rig.plates, neededRefluxRatio),
    neededRefluxRatio,
    remedies: {
      plates: platesFor(equilibrium, limit, pot, rig.plates === 0 ? columnReflux : usefulReflux),
      collectW:
        neededRefluxRatio === null || neededRefluxRatio > mostReflux
          ? null
          : heaterPowerForRefluxW(rig, refluxToSet, request.roomTemperatureC ?? 20),
      chargeStrengthAbv: potNeeded < 0.5 * limit ? strengthFromMoleFraction(potNeeded) : null,
      leastStrengthAbv: reachable > pot ? strengthFromMoleFraction(reachable) : null,
    },
  };
}

function causeOf(plates: number, neededRefluxRatio: number | null): NoMainFractionCause {
  if (neededRefluxRatio === null) return plates === 0 ? 'no-column' : 'too-few-plates';
  return neededRefluxRatio > mostReflux ? 'weak-charge' : 'too-little-reflux';
}

/** Least reflux with which these stages reach the limit; null when not even total reflux does. */
function refluxFor(
  equilibrium: EquilibriumCurve,
  limit: number,
  pot: number,
  stages: number,
): number | null {
  if (potBelowStages(equilibrium, limit, totalReflux, stages) > pot) return null;
  let low = 0;
  let high = totalReflux;
  for (let step = 0; step < 60; step++) {
    // Halving the logarithm: reflux spans five decades.
    const middle = Math.sqrt((low + 0.01) * (high + 0.01)) - 0.01;
    if (potBelowStages(equilibrium, limit, middle, stages) > pot) low = middle;
    else high = middle;
  }
  return high;
}

function platesFor(
  equilibrium: EquilibriumCurve,
  limit: number,
  pot: number,
  refluxRatio: number,
): number | null {
  const { stages } = stepPlates({
    equilibrium,
    distillateMoleFraction: limit,
    potMoleFraction: pot,
    refluxRatio,
  });
  return stages === null ? null : Math.max(0, stages - 1);
}
