import { requireInRange } from '../result/index.ts';

/** Ticks of an axis and how many decimals tell them apart. */
export interface Ticks {
  readonly values: readonly number[];
  readonly decimals: number;
}

const steps = [1, 2, 5, 10];
const timeStepsS = [10, 30, 60, 120, 300, 600, 900, 1200, 1800, 3600, 7200, 10_800, 21_600, 43_200];

/**
 * Round numbers between two ends: the rule of steps 1, 2 and 5 times a power of ten.
 *
 * @param low, high ends [any unit], low ≤ high; most: the largest count of ticks, ≥ 2
 * @throws OutOfRangeError when low is above high
 *
 * Source: common practice, no source.
 * @example
 * niceTicks(76.8, 83.2, 6).values // => [78, 80, 82]
 * niceTicks(3, 3, 6).values // => [3]
 * niceTicks(0, 1, 6) // => { "values": [0, 0.2, 0.4, 0.6, 0.8, 1], "decimals": 1 }
 */
export function niceTicks(low: number, high: number, most: number): Ticks {
  requireInRange('length of the axis', high - low, 0, Number.MAX_VALUE, '');
  if (high === low) return { values: [low], decimals: decimalsOf(low) };
  const rough = (high - low) / Math.max(1, most - 1);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = (steps.find((factor) => factor * power >= rough * (1 - 1e-9)) ?? 10) * power;
  const decimals = decimalsOf(step);
  return { values: multiples(step, low, high, decimals), decimals };
}

/**
 * Round times between two ends: the rule of whole tens of seconds, minutes and hours.
 *
 * @param fromS, toS ends [s], fromS < toS; most: the largest count of ticks, ≥ 2
 *
 * Source: common practice, no source.
 * @example
 * timeTicks(0, 5400, 7) // => [0, 900, 1800, 2700, 3600, 4500, 5400]
 */
export function timeTicks(fromS: number, toS: number, most: number): readonly number[] {
  const rough = (toS - fromS) / Math.max(1, most - 1);
  const step =
    timeStepsS.find((candidate) => candidate >= rough) ?? 86_400 * Math.ceil(rough / 86_400);
  return multiples(step, fromS, toS, 0);
}

function multiples(step: number, low: number, high: number, decimals: number): number[] {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) =>
    Number(((first + index) * step).toFixed(decimals)),
  );
}

function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 10; decimals++) {
    if (Math.abs(Number(step.toFixed(decimals)) - step) < 1e-9 * step) return decimals;
  }
  return 10;
}
