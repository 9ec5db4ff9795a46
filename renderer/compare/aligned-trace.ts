import { indexAtTime, pointAt, type Series } from '#shared-core';

/** A point of a run laid over others: time from vapour arrival, head on the chosen scale. */
export type AlignedPoint = readonly [timeS: number, value: number | null];

/** Readings are drawn as means over this time: dashes stay dashes, however noisy the probe [s]. */
const meanOverS = 15;

/** A run's head with vapour arrival at zero and a given temperature taken off; null where nothing was read. */
export function alignedTrace(
  head: Series,
  arrivedS: number,
  range: { readonly fromS: number; readonly toS: number },
  takenOffC: number,
): readonly AlignedPoint[] {
  const count = Math.ceil((range.toS - range.fromS) / meanOverS);
  return Array.from({ length: count }, (_, index): AlignedPoint => {
    const fromS = range.fromS + index * meanOverS;
    const value = meanBetween(head, arrivedS + fromS, arrivedS + fromS + meanOverS);
    return [fromS + meanOverS / 2, value === null ? null : value - takenOffC];
  });
}

/** When the last of these traces ends [s]: a still that cooled for hours before anybody stopped the run has nothing to show there. */
export function drawnUntilS(traces: readonly (readonly AlignedPoint[])[]): number {
  return traces.reduce((latestS, points) => {
    const last = points.findLast(([, value]) => value !== null);
    return Math.max(latestS, last === undefined ? 0 : last[0] + meanOverS / 2);
  }, 0);
}

function meanBetween(series: Series, fromS: number, toS: number): number | null {
  const first = indexAtTime(series, fromS);
  const end = indexAtTime(series, toS);
  let sum = 0;
  for (let index = first; index < end; index++) sum += pointAt(series, index)?.value ?? 0;
  return end > first ? sum / (end - first) : null;
}
