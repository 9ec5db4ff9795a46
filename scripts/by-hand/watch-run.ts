import { createMonitor, type RunInput, type RunSettings, type Verdicts } from '#shared-core';
import type { Condition } from '../../shared-core/stages/index.ts';

/** What the monitor said of a run: its verdicts, and the condition it told each second. */
export interface Watched {
  readonly verdicts: Verdicts;
  readonly conditions: readonly (Condition | null)[];
}

/** Something that watches a run as it would run live, up to its end [s]. */
export type Watch = (settings: RunSettings, inputs: readonly RunInput[], endS: number) => Watched;

/** The monitor, as it would run live. */
export const watchRun: Watch = (settings, inputs, endS) => {
  const monitor = createMonitor(settings);
  const conditions: (Condition | null)[] = [];
  let next = 0;
  for (let timeS = 0; timeS <= endS; timeS += 1) {
    for (let input = inputs[next]; input !== undefined && input.timeS <= timeS; ) {
      monitor.push(input);
      next += 1;
      input = inputs[next];
    }
    conditions.push(monitor.advanceTo(timeS).stage.condition);
  }
  return { verdicts: monitor.verdicts(), conditions };
};
