import { limitTemperatureC } from '../../shared-core/equilibrium/index.ts';
import type { ByHandRun } from './by-hand-run.ts';

/** A thermometer and a number on paper: call when the reading has been above it for 20 s. */
export interface ThresholdRule {
  readonly name: string;
  thresholdC(run: ByHandRun): number;
}

export const thresholdRules: readonly ThresholdRule[] = [
  {
    name: 'limit at told pressure, 20 s',
    thresholdC: ({ settings: { leastStrengthAbv, pressure } }) =>
      limitTemperatureC({ leastStrengthAbv, pressureKPa: pressure.pressureKPa }),
  },
  { name: 'fixed 79 °C, 20 s', thresholdC: () => 79 },
];

const heldS = 20;
/** The rule begins when vapour has been at the thermometer, below the number, for so long. */
const armedS = 120;
const vapourC = 60;

export function thresholdCall(run: ByHandRun, rule: ThresholdRule): number | null {
  const thresholdC = rule.thresholdC(run);
  const { timeS, values } = run.report.head;
  const bad = new Set(run.report.head.bad);
  let below = 0;
  let lastS = 0;
  let aboveSinceS: number | null = null;
  for (const [index, value] of values.entries()) {
    if (bad.has(index)) continue;
    const nowS = timeS[index] as number;
    if (value > thresholdC) {
      aboveSinceS ??= nowS;
      if (below >= armedS && nowS - aboveSinceS >= heldS) return nowS;
    } else {
      aboveSinceS = null;
      if (value > vapourC) below += nowS - lastS;
    }
    lastS = nowS;
  }
  return null;
}
