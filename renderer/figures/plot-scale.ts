import type { Axis } from './axis.ts';

/** Where the paper lies in the drawing, in pixels. */
export interface PaperEdges {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How two quantities become pixels; what lies outside stops at the edge. */
export interface PlotScale extends PaperEdges {
  /** Height of the type in pixels; signs and their distances go by it. */
  readonly textPx: number;
  readonly xOf: (value: number) => number;
  readonly yOf: (value: number) => number;
  /** The quantity at a pixel across. */
  readonly xAt: (pixel: number) => number;
  /** A line through points, as the `d` of a path; points with a null height interrupt it. */
  readonly line: (points: Iterable<readonly [number, number | null]>) => string;
  /** The area between two lines, as the `d` of a path. */
  readonly between: (upper: Line, lower: Line) => string;
}

type Line = readonly (readonly [number, number])[];

export function plotScale(edges: PaperEdges, x: Axis, y: Axis, textPx: number): PlotScale {
  const { left, right, top, bottom } = edges;
  const share = (value: number, { low, high }: Axis) =>
    Math.min(1, Math.max(0, (value - low) / (high - low)));
  const xOf = (value: number) => left + share(value, x) * (right - left);
  const yOf = (value: number) => bottom - share(value, y) * (bottom - top);
  const line: PlotScale['line'] = (points) => {
    let path = '';
    let isDrawing = false;
    for (const [atX, atY] of points) {
      if (atY !== null)
        path += `${isDrawing ? 'L' : 'M'}${xOf(atX).toFixed(1)} ${yOf(atY).toFixed(1)}`;
      isDrawing = atY !== null;
    }
    return path;
  };
  return {
    ...edges,
    textPx,
    xOf,
    yOf,
    xAt: (pixel) => {
      const across = Math.min(1, Math.max(0, (pixel - left) / (right - left)));
      return x.low + across * (x.high - x.low);
    },
    line,
    between: (upper, lower) => `${line([...upper, ...lower.toReversed()])}Z`,
  };
}
