import { requireInRange } from '../result/index.ts';
import { applyBatchAction } from './apply-batch-action.ts';
import type { BatchAction, BatchEvent } from './batch-event.ts';
import { buildBatchMachine, machineTimeS, stepBatchMachine } from './batch-machine.ts';
import type { BatchSetup } from './batch-setup.ts';
import type { BatchLedger, BatchState } from './batch-state.ts';
import { readBatchLedger, readBatchState } from './read-batch-state.ts';
import { requireSoundSetup } from './require-sound-setup.ts';

/** A still that runs as fast as it is told to. */
export interface BatchSimulation {
  /** Runs to the last whole step that is not after this time [s]; an earlier time does nothing. */
  advance(toS: number): void;
  /** Does something to the rig now; it takes effect with the next step. */
  applyEvent(action: BatchAction): void;
  /** The still at this moment. */
  readonly state: BatchState;
  /** Where ethanol, water and heat are. */
  readonly ledger: BatchLedger;
}

/** Allows for times such as 0.1 × 3 that fall a hair short of a whole step. */
const timeSlack = 1e-9;

/**
 * A batch rectification that is run step by step and can be acted upon: pot, plates with hold-up, still head
 * with its bulb, condenser and receivers.
 *
 * Each stage holds ethanol, water and heat: `dn_i/dt = Σ in − Σ out`, `dE/dt = Σ H in − Σ H out − k(T − T_room)`,
 * with vapour in equilibrium (`y = y*(x, p)`, T at the bubble point) whenever E exceeds saturation. Heat lost by
 * the column condenses vapour, so reflux and drip rate follow from the losses: R ≈ column loss ÷ distillate duty.
 * Left out: pressure drop, vapour hold-up, heat of mixing, flooding.
 *
 * @param setup charge, rig, pressure and schedule; valid ranges and units stand beside each field
 * @throws OutOfRangeError for a setup outside its ranges
 *
 * Source: the stage equations are those of any text on dynamic distillation, e.g. Seader, Henley & Roper,
 * Separation Process Principles, 3rd ed., ch. 13 (from memory); the numerical scheme is our own.
 * @example
 * const still = createBatchSimulation(pearFermentSetup());
 * still.advance(1800);
 * still.state.timeS // => 1800
 * still.state.vapourAtHead // => true
 * still.state.headVapourTemperatureC // ≈ 78.4 ± 0.3
 */
export function createBatchSimulation(setup: BatchSetup): BatchSimulation {
  requireSoundSetup(setup);
  const machine = buildBatchMachine(setup);
  const schedule: readonly BatchEvent[] = setup.schedule ?? [{ kind: 'heat-on', timeS: 0 }];
  let next = 0;
  const applyDue = (): void => {
    const timeS = machineTimeS(machine);
    for (;;) {
      const event = schedule[next];
      if (event === undefined || event.timeS > timeS + timeSlack) return;
      applyBatchAction(machine, event);
      next += 1;
    }
  };
  return {
    advance: (toS) => {
      requireInRange('time', toS, 0, 1e7, 's');
      const lastStep = Math.floor(toS / machine.stepS + timeSlack);
      while (machine.stepCount < lastStep) {
        applyDue();
        stepBatchMachine(machine);
      }
    },
    applyEvent: (action) => applyBatchAction(machine, action),
    get state() {
      return readBatchState(machine);
    },
    get ledger() {
      return readBatchLedger(machine);
    },
  };
}
