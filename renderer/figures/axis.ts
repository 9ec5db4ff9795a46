/** One axis of a drawing: what it spans, where it is ticked, how ticks read. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  readonly name: string;
  readonly tickWords: (value: number) => string;
}

/** A fraction from 0 to 1, told in per cent. */
export function percentAxis(
  name: string,
  number: (value: number, decimals: number) => string,
): Axis {
  return {
    low: 0,
    high: 1,
    ticks: [0, 0.2, 0.4, 0.6, 0.8, 1],
    name,
    tickWords: (value) => number(100 * value, 0),
  };
}
