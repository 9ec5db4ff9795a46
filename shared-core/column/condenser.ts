import { liquidHeatJPerMol } from './heat-content.ts';
import type { Rig } from './rig.ts';
import type { StageStack } from './stage-stack.ts';
import type { StillHead } from './still-head.ts';

/** Ethanol, water and traces in one vessel. */
export interface Vessel {
  ethanolMol: number;
  waterMol: number;
  readonly traceMol: Float64Array;
}

/** Condensate on its way down, the receivers, and the distillate sorted by the strength of its vapour. */
export interface Collection {
  /** Share of the condensate led back to the column, 0 … 1. */
  returnedFraction: number;
  readonly running: Vessel;
  readonly receivers: Vessel[];
  readonly aboveLimit: Vessel;
  readonly belowLimit: Vessel;
  /** Distillate condensed in the last step [mol]. */
  condensedMol: number;
  /** Condensate that dropped into the receiver in the last step. */
  droppedEthanolMol: number;
  droppedWaterMol: number;
}

export function emptyVessel(traceCount: number): Vessel {
  return { ethanolMol: 0, waterMol: 0, traceMol: new Float64Array(traceCount) };
}

export function emptyCollection(returnedFraction: number, traceCount: number): Collection {
  return {
    returnedFraction,
    running: emptyVessel(traceCount),
    receivers: [emptyVessel(traceCount)],
    aboveLimit: emptyVessel(traceCount),
    belowLimit: emptyVessel(traceCount),
    condensedMol: 0,
    droppedEthanolMol: 0,
    droppedWaterMol: 0,
  };
}

/**
 * Condenses what passed the head, leads a share back to the top plate and lets the rest run to the receiver.
 *
 * @param limitY vapour at least this rich counts as above the strength limit
 * @param drainedShare what runs down in one step of the condensate on the way, 0 … 1
 * @returns heat given to the cooling water [J]
 */
export function stepCondenser(
  collection: Collection,
  head: StillHead,
  stack: StageStack,
  rig: Rig,
  limitY: number,
  drainedShare: number,
): number {
  const { running, returnedFraction } = collection;
  const receiver = collection.receivers[collection.receivers.length - 1] as Vessel;
  const top = stack.count - 1;
  const passed = head.passedMol;
  const y = head.vapourEthanolMoleFraction;
  const heatPerMol = liquidHeatJPerMol(y, rig.condenser.distillateTemperatureC);
  const returned = passed * returnedFraction;
  const kept = passed - returned;
  if (returned > 0) {
    stack.ethanolMol[top] = (stack.ethanolMol[top] as number) + returned * y;
    stack.waterMol[top] = (stack.waterMol[top] as number) + returned * (1 - y);
    stack.energyJ[top] = (stack.energyJ[top] as number) + returned * heatPerMol;
  }
  collection.condensedMol = kept;
  add(running, kept * y, kept * (1 - y));
  add(y >= limitY ? collection.aboveLimit : collection.belowLimit, kept * y, kept * (1 - y));
  collection.droppedEthanolMol = running.ethanolMol * drainedShare;
  collection.droppedWaterMol = running.waterMol * drainedShare;
  add(running, -collection.droppedEthanolMol, -collection.droppedWaterMol);
  add(receiver, collection.droppedEthanolMol, collection.droppedWaterMol);

  const risen = stack.risenMol[top] as number;
  const passedShare = risen > 0 ? passed / risen : 0;
  for (let index = 0; index < stack.traces.length; index++) {
    const trace = stack.traces[index];
    if (trace === undefined) continue;
    const up = trace.risenMol[top] as number;
    const collected = up * passedShare * (1 - returnedFraction);
    trace.mol[top] = (trace.mol[top] as number) + up - collected;
    const onTheWay = (running.traceMol[index] as number) + collected;
    running.traceMol[index] = onTheWay * (1 - drainedShare);
    receiver.traceMol[index] = (receiver.traceMol[index] as number) + onTheWay * drainedShare;
  }
  return head.passedEnergyJ - passed * heatPerMol;
}

function add(vessel: Vessel, ethanolMol: number, waterMol: number): void {
  vessel.ethanolMol += ethanolMol;
  vessel.waterMol += waterMol;
}
