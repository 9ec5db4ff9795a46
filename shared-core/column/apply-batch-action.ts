import { assertNever, requireInRange } from '../result/index.ts';
import type { BatchAction } from './batch-event.ts';
import { type BatchMachine, machineTimeS } from './batch-machine.ts';
import { emptyVessel } from './condenser.ts';
import { heaterPowerRangeW } from './heater-power-range.ts';

/** A day: longer than any run. */
const longestSpellS = 86_400;

/** Changes the still as a person (or a draught) does, from the next step on. */
export function applyBatchAction(machine: BatchMachine, action: BatchAction): void {
  const { heater, collection, surge, setup } = machine;
  const timeS = machineTimeS(machine);
  switch (action.kind) {
    case 'heat-on':
      heater.setW = requirePowerW(action.powerW ?? setup.rig.heater.powerW);
      return;
    case 'heat-eased':
      heater.setW = requirePowerW(action.powerW);
      return;
    case 'heat-off':
      heater.setW = 0;
      return;
    case 'heat-removed':
      heater.removed = true;
      return;
    case 'heat-returned':
      heater.removed = false;
      return;
    case 'reflux-set':
      requireInRange('returned fraction', action.returnedFraction, 0, 1, '');
      collection.returnedFraction = action.returnedFraction;
      return;
    case 'draught':
      requireInRange('loss factor', action.lossFactor, 0, 10, '');
      requireInRange('duration of a draught', action.durationS, 0, longestSpellS, 's');
      machine.draughtUntilS = timeS + action.durationS;
      machine.draughtFactor = action.lossFactor;
      return;
    case 'surging':
      requireInRange('depth of surging', action.depth, 0, 1, '');
      requireInRange('period of surging', action.periodS, 2, 600, 's');
      requireInRange('duration of surging', action.durationS, 0, longestSpellS, 's');
      surge.startedS = timeS;
      surge.untilS = timeS + action.durationS;
      surge.depth = action.depth;
      surge.periodS = action.periodS;
      return;
    case 'receiver-changed':
      collection.receivers.push(emptyVessel(machine.stack.traces.length));
      return;
    default:
      assertNever(action);
  }
}

function requirePowerW(powerW: number): number {
  requireInRange('heater power', powerW, 0, heaterPowerRangeW.high, 'W');
  return powerW;
}
