/** One axis of a drawing: what it spans, where it is ticked, how ticks read. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  readonly name: string;
  readonly tickWords: (value: number) => string;
}
