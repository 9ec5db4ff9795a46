import { timeTicks } from '#shared-core';
import type { Axis } from './axis.ts';

/** An axis of run time; times before zero read with a minus. */
export function timeAxis(
  fromS: number,
  toS: number,
  name: string,
  words: (timeS: number) => string,
  mostTicks = 8,
): Axis {
  return {
    low: fromS,
    high: toS,
    ticks: timeTicks(fromS, toS, mostTicks),
    name,
    tickWords: (timeS) => (timeS < 0 ? `−${words(-timeS)}` : words(timeS)),
  };
}
