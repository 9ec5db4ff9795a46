import type { RunSettings } from '../../run/index.ts';
import type { Stage } from '../../stages/index.ts';
import type { AlarmBank } from '../alarm-bank.ts';
import { settledAfterS } from '../patience.ts';
import type { HeadNow } from '../situation/head-course.ts';

/** Whether the heat-off call has been made before, and how patient that makes. */
export interface HeatOffCalls {
  note(bank: AlarmBank): void;
  wasCalled(): boolean;
  /** How long vapour may be weaker than the limit before it is told of [s]. */
  patienceS(stage: Stage, now: HeadNow): number;
}

/** Who brought the heat back in the tail is reminded of it after so long [s]. */
const reminderS = 240;

export function createHeatOffCalls({ reactionTimeS }: RunSettings): HeatOffCalls {
  let wasCalled = false;
  let wasOverLimit = false;
  return {
    note: (bank) => {
      wasCalled ||= bank.isActive('plateau-departure');
      wasOverLimit ||= bank.isActive('over-limit');
    },
    wasCalled: () => wasCalled,
    patienceS: (stage, { outlook }) => {
      if (stage === 'tail' && wasOverLimit) return reminderS;
      // A head that was never stronger than the limit gives nothing to react to: weak vapour is told of sooner.
      return outlook.strongForS > 0 ? reactionTimeS : settledAfterS;
    },
  };
}
