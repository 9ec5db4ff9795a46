import { appendToSeries, emptySeries, reduceToWidth } from '../series/index.ts';
import type { Point, Shape } from './drawing.ts';
import { line, type PlotArea, place } from './plot-area.ts';

/** A value at a time. */
export interface TimedValue {
  readonly timeS: number;
  readonly value: number;
}

/** A silence longer than this breaks the line [s]; the readings of a steady probe come far oftener. */
const gapS = 30;

/** A run's line, reduced to what its width can show, and broken where readings are missing. */
export function runLine(
  area: PlotArea,
  points: readonly TimedValue[],
  stroke: { readonly colour: string; readonly widthPt: number; readonly dash?: readonly number[] },
): readonly Shape[] {
  return segments(area, points).map((segment) =>
    line(segment, stroke.colour, stroke.widthPt, stroke.dash),
  );
}

/** The stretches of a line between gaps, as places in the drawing. */
export function segments(
  area: PlotArea,
  points: readonly TimedValue[],
): readonly (readonly Point[])[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || last.timeS <= first.timeS) return [];
  const breaksS = points.flatMap(({ timeS }, index) => {
    const before = points[index - 1];
    return before !== undefined && timeS - before.timeS > gapS ? [(timeS + before.timeS) / 2] : [];
  });
  const drawn = reduceToWidth(appendToSeries(emptySeries(), points), {
    fromS: first.timeS,
    toS: last.timeS,
    columns: Math.round(area.right - area.left),
    breaksS,
  });
  const found: Point[][] = [[]];
  for (const { timeS, value } of drawn) {
    if (value === null) found.push([]);
    else found.at(-1)?.push(place(area, timeS, value));
  }
  return found.filter((segment) => segment.length > 1);
}
