import {
  carbonDioxidePerAbvGPerL,
  dissolvedGasGPerL,
  ethanolCarriedGPerG,
  waterCarriedGPerG,
} from './mass-loss.ts';
import type { PossibleFerments } from './possible-ferments.ts';
import { abvPerGravity } from './practical-end.ts';

/** What has become of the gas that a ferment made: still in the liquid, or gone with the vapours that it took along [g]. */
export interface GasBudget {
  readonly madeG: number;
  readonly heldG: number;
  readonly leftG: number;
  readonly takenAlongG: number;
}

export const noGasYet: GasBudget = { madeG: 0, heldG: 0, leftG: 0, takenAlongG: 0 };

/** Temperature where nobody reads it, a warm corner of a room [°C]; common practice, no source. */
const unreadTemperatureC = 23;
/** Ferments at rest hold some more than at balance with the air above; common practice, no source. */
const heldOverBalance = 1.12;
/** Strength at which the gas leaves on the average [% vol]. */
const usualAbv = 6;
/** Gas of a litre of must, over that of a litre of finished liquid, into which it shrinks a little; from a mass balance. */
const mustPerFinished = 0.997;

/** Gas that a possible ferment has made with the usual yield [g]. */
export function usualGasG(cloud: PossibleFerments, index: number, volumeMl: number): number {
  return (
    abvPerGravity(cloud.original[index] as number) *
    (cloud.lost[index] as number) *
    carbonDioxidePerAbvGPerL *
    (volumeMl / 1000) *
    mustPerFinished
  );
}

/**
 * The budget once more gas was made: what the liquid can't hold leaves, saturated with vapours at the warmth of that hour. Gas
 * that has left does not come back when it gets colder, and vapours that are gone are not taken along again.
 *
 * @param before the budget so far; madeG gas made in all [g]; temperatureC of the liquid, null where nobody reads it; volumeMl > 0
 */
export function spendGas(
  before: GasBudget,
  madeG: number,
  temperatureC: number | null,
  volumeMl: number,
): GasBudget {
  const within = Math.min(40, Math.max(1, temperatureC ?? unreadTemperatureC));
  const inLiquidG = before.heldG + Math.max(0, madeG - before.madeG);
  const heldG = Math.min(
    inLiquidG,
    (heldOverBalance * dissolvedGasGPerL(within) * volumeMl) / 1000,
  );
  const leavesG = inLiquidG - heldG;
  const alongGPerG = waterCarriedGPerG(within) + ethanolCarriedGPerG(usualAbv, within);
  return {
    madeG: Math.max(before.madeG, madeG),
    heldG,
    leftG: before.leftG + leavesG,
    takenAlongG: before.takenAlongG + leavesG * alongGPerG,
  };
}

/** The budget once the gas was shaken or stirred out. */
export function degas(before: GasBudget): GasBudget {
  return { ...before, heldG: 0, leftG: before.leftG + before.heldG };
}

/** Grams that a gram of gas has taken off the balance, itself included. */
export function lostPerGasG({ leftG, takenAlongG }: GasBudget): number {
  return leftG > 0 ? 1 + takenAlongG / leftG : 1;
}
