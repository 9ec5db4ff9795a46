import { azeotrope } from '#shared-core';
import type { Call } from './score-run.ts';
import type { ScoredRun } from './scored-run.ts';

/** A rule with a threshold on the raw reading, as a thermometer and a note on paper would have it. */
export interface FixedRule {
  readonly name: string;
  /** Threshold for this run [°C]. */
  thresholdC(run: ScoredRun): number;
}

/** Both were set to be as good as such rules can be at 101.3 kPa for 80 % vol. */
export const fixedRules: readonly FixedRule[] = [
  { name: 'fixed 79 °C', thresholdC: () => 79 },
  {
    name: 'azeotrope + 5.0 K',
    thresholdC: ({ settings }) => azeotrope(settings.pressure.pressureKPa).temperatureC + 5,
  },
];

const armedS = 120;

/**
 * Calls when a reading is above the threshold, after readings were below it in vapour for two minutes;
 * once called, it waits to be back below.
 */
export function fixedRuleCalls(rule: FixedRule, run: ScoredRun): readonly Call[] {
  const thresholdC = rule.thresholdC(run);
  const wetC = azeotrope(run.settings.pressure.pressureKPa).temperatureC - 2;
  const calls: { raisedS: number; clearedS: number | null }[] = [];
  let below = 0;
  let lastS = 0;
  for (const input of run.inputs) {
    if (input.kind !== 'reading') continue;
    const elapsedS = input.timeS - lastS;
    lastS = input.timeS;
    if (input.value > wetC && input.value <= thresholdC) below += elapsedS;
    if (input.value > thresholdC && below >= armedS) {
      calls.push({ raisedS: input.timeS, clearedS: null });
      below = 0;
    }
    const last = calls[calls.length - 1];
    if (last !== undefined && last.clearedS === null && input.value < thresholdC - 0.3) {
      last.clearedS = input.timeS;
    }
  }
  return calls;
}
