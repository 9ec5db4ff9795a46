import { appendToSeries, emptySeries, reduceToWidth, unbrokenStretches } from '../series/index.ts';
import type { Point, Shape } from './drawing.ts';
import { line, type PlotArea, place } from './plot-area.ts';

/** A value at a time. */
export interface TimedValue {
  readonly timeS: number;
  readonly value: number;
}

/** A run's line, reduced to what its width can show, and broken where readings are missing. */
export function runLine(
  area: PlotArea,
  points: readonly TimedValue[],
  stroke: { readonly colour: string; readonly widthPt: number; readonly dash?: readonly number[] },
): readonly Shape[] {
  return unbrokenStretches(points).flatMap((stretch) =>
    stretch.length < 2
      ? []
      : [line(reducedLine(area, stretch), stroke.colour, stroke.widthPt, stroke.dash)],
  );
}

/** One unbroken stretch of at least two points as places in the drawing. */
export function reducedLine(area: PlotArea, stretch: readonly TimedValue[]): readonly Point[] {
  const [first, last] = [stretch[0], stretch.at(-1)];
  if (first === undefined || last === undefined || last.timeS <= first.timeS) return [];
  const share = (last.timeS - first.timeS) / (area.x.high - area.x.low);
  return reduceToWidth(appendToSeries(emptySeries(), stretch), {
    fromS: first.timeS,
    toS: last.timeS,
    columns: Math.max(1, Math.round(share * (area.right - area.left))),
  }).flatMap(({ timeS, value }) => (value === null ? [] : [place(area, timeS, value)]));
}
