/** One axis of a drawing: what it spans, where it is ticked, how ticks read. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  readonly name: string;
  readonly tickWords: (value: number) => string;
}

const tickDigits = [1, 2, 5];

/** Round numbers between two ends, at most so many (and at least two where two fit). */
export function roundTicks(low: number, high: number, most: number): readonly number[] {
  const span = high - low;
  if (!(span > 0) || most < 1) return [low];
  const step = tickStep(span / most);
  const decimals = Math.max(0, -Math.floor(Math.log10(step)));
  const ticks: number[] = [];
  for (let index = Math.ceil(low / step - 1e-9); index * step <= high + step * 1e-9; index++) {
    ticks.push(Number((index * step).toFixed(decimals)));
  }
  return ticks;
}

function tickStep(least: number): number {
  const decade = 10 ** Math.floor(Math.log10(least));
  const digit = tickDigits.find((known) => known * decade >= least * (1 - 1e-9));
  return digit === undefined ? 10 * decade : digit * decade;
}
