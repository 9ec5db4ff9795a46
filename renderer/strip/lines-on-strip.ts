import type { DrawnPoint, Estimate } from '#shared-core';
import type { Point } from './clear-place.ts';
import type { PlotFrame } from './plot-frame.ts';

/** The trace as lines in pixels, one between every two interruptions. */
export function traceLines(
  drawn: readonly DrawnPoint[],
  { freeXOf, freeYOf }: Pick<PlotFrame, 'freeXOf' | 'freeYOf'>,
): readonly (readonly Point[])[] {
  const lines: Point[][] = [[]];
  for (const { timeS, value } of drawn) {
    if (value === null) lines.push([]);
    else lines.at(-1)?.push([freeXOf(timeS), freeYOf(value)]);
  }
  return lines;
}

/** From where the forecast sets out, and when it reaches the limit. */
export interface Fan {
  readonly fromS: number;
  readonly fromC: number;
  readonly endS: Estimate;
  readonly limitC: number;
}

/** The forecast's early, likely and late course: each bends through the middle its curve is drawn by. */
export function fanLines(
  { xOf, freeXOf, yOf }: Pick<PlotFrame, 'xOf' | 'freeXOf' | 'yOf'>,
  { fromS, fromC, endS, limitC }: Fan,
): readonly (readonly Point[])[] {
  if (endS.high <= fromS || fromC >= limitC) return [];
  const [x0, y0, y1] = [xOf(fromS), yOf(fromC), yOf(limitC)];
  return [endS.low, endS.value, endS.high].map((timeS) => {
    const x1 = freeXOf(Math.max(fromS, timeS));
    return [
      [x0, y0],
      [(x0 + x1) / 2, (3 * y0 + y1) / 4],
      [x1, y1],
    ];
  });
}
