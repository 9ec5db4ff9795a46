import { reduceToWidth, type Series } from '#shared-core';

/** A point of a run laid over others: time from vapour arrival, head on the chosen scale. */
export type AlignedPoint = readonly [timeS: number, value: number | null];

/** Draws a run's head with vapour arrival at zero and a given temperature taken off. */
export function alignedTrace(
  head: Series,
  arrivedS: number,
  range: { readonly fromS: number; readonly toS: number },
  takenOffC: number,
): readonly AlignedPoint[] {
  return reduceToWidth(head, {
    fromS: Math.max(0, range.fromS + arrivedS),
    toS: Math.max(1, range.toS + arrivedS),
    columns: 700,
  }).map(({ timeS, value }) => [timeS - arrivedS, value === null ? null : value - takenOffC]);
}
