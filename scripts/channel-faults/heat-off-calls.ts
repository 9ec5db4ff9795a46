import { type Alarm, createMonitor, type RunInput, type RunSettings } from '#shared-core';

/** While one of these stands, a person is told to take the heat off. */
export interface CallSpan {
  readonly alarm: Alarm;
  readonly raisedS: number;
  readonly clearedS: number | null;
}

/** What calls for the heat to be taken off by the head; what a channel calls for on its own behalf is not among it. */
export const headCalls: readonly Alarm[] = ['plateau-departure', 'over-limit'];

/** A channel may delay a call by so much [s]. */
export const toleratedS = 5;

export interface Heard {
  readonly calls: readonly CallSpan[];
}

/**
 * Watches a run as it would be watched live, for as long as the heat is on.
 *
 * @param isEnough whether what has been heard up to a time answers the question, so that the rest need not be watched
 */
export function hearHeatOffCalls(
  settings: RunSettings,
  inputs: readonly RunInput[],
  heatOffS: number,
  isEnough: (heard: Heard, timeS: number) => boolean = () => false,
): Heard {
  const monitor = createMonitor(settings, { forecasts: hangsOnForecast(settings) });
  const spans = new Map<string, CallSpan>();
  let heard: Heard = { calls: [] };
  for (const input of inputs) {
    if (input.timeS >= heatOffS) break;
    monitor.push(input);
    for (const change of monitor.takeChanges()) {
      if (change.kind !== 'alarm-changed') continue;
      const { alarm, raisedS, clearedS } = change.record;
      if (headCalls.includes(alarm)) spans.set(`${alarm} ${raisedS}`, { alarm, raisedS, clearedS });
      heard = { calls: [...spans.values()] };
    }
    if (isEnough(heard, input.timeS)) break;
  }
  return heard;
}

/** Where neither the limit nor the first fraction follows the forecast, calls by the head are the same without one. */
export function hangsOnForecast({ stop, firstFraction }: RunSettings): boolean {
  return stop.kind !== 'strength' || firstFraction.kind !== 'minutes';
}

/** First call of each kind [s]: what a fault elsewhere must leave as it is. */
export function firstCallsS({ calls }: Heard): readonly number[] {
  return headCalls.flatMap((alarm) => {
    const first = calls.find((call) => call.alarm === alarm);
    return first === undefined ? [] : [first.raisedS];
  });
}

/**
 * How much later than at a second a call stands [s]: 0 where one already does or does within {@link toleratedS}; null where
 * none does any more.
 */
export function delayAfterS({ calls }: Heard, atS: number): number | null {
  const stands = calls.some(
    ({ raisedS, clearedS }) => raisedS <= atS + toleratedS && (clearedS === null || clearedS > atS),
  );
  if (stands) return 0;
  const later = calls.map(({ raisedS }) => raisedS - atS).filter((delayS) => delayS > 0);
  return later.length === 0 ? null : Math.min(...later);
}
