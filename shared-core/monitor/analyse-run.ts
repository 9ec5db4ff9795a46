import type { RunInput, RunSettings } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import { createMonitor } from './create-monitor.ts';

/**
 * Runs the monitor over recorded inputs and returns its verdicts: the one way for replay, reports and
 * files alike, so all of them agree with what was said live.
 *
 * @param inputs readings, marks and link changes in the order they came
 * @param endS time the run was ended at [s]; silence up to there is seen
 * @example
 * analyseRun(defaultRunSettings, [], 10).verdict.mainFraction // => false
 */
export function analyseRun(
  settings: RunSettings,
  inputs: readonly RunInput[],
  endS: number,
): Verdicts {
  const monitor = createMonitor(settings);
  for (const input of inputs) monitor.push(input);
  monitor.advanceTo(endS);
  return monitor.verdicts();
}
