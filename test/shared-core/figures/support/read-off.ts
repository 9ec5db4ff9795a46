import type { Drawing } from '#shared-core';
import type { Point, Shape } from '../../../../shared-core/figures/drawing.ts';

type Path = Extract<Shape, { kind: 'path' }>;
type Words = Extract<Shape, { kind: 'text' }>;

export const pathsOf = ({ shapes }: Drawing): readonly Path[] =>
  shapes.filter((shape): shape is Path => shape.kind === 'path');
export const wordsOf = ({ shapes }: Drawing): readonly Words[] =>
  shapes.filter((shape): shape is Words => shape.kind === 'text');

/** The value at a place of an axis, by two ticks as far apart as there are, read as a person with a ruler would. */
function scaleOf(ticks: readonly (readonly [place: number, value: number])[]) {
  const [first, last] = [ticks[0], ticks.at(-1)];
  if (first === undefined || last === undefined || ticks.length < 2) throw new Error('no axis');
  const perPt = (last[1] - first[1]) / (last[0] - first[0]);
  return (place: number) => first[1] + perPt * (place - first[0]);
}

/** A number, or a time of an axis [s]: `40 s`, `25 min`, `1 h 35`. */
function numberIn(text: string): number {
  const [, sign, hours, more, minutes, seconds] =
    /^(−?)(?:(\d+) h(?: (\d\d))?|(\d+) min|(\d+) s)$/.exec(text) ?? [];
  if (sign === undefined) return Number(text.replace('−', '-'));
  const timeS =
    3600 * Number(hours ?? 0) + 60 * Number(minutes ?? more ?? 0) + Number(seconds ?? 0);
  return sign === '' ? timeS : -timeS;
}

const isNumber = ({ text }: Words) => text !== '' && Number.isFinite(numberIn(text));

/** What is read off a figure with numbers along its left and lower edges: each point of a line as a pair of values. */
export function readOff(drawing: Drawing, topPt = 0, bottomPt = drawing.heightPt) {
  const inRow = ({ at }: Words) => at[1] > topPt && at[1] < bottomPt;
  // The grid tells where a tick of the upright axis lies: its words stand a little below, so that their middle is beside it.
  const grid = pathsOf(drawing).filter(({ stroke }) => stroke?.colour === '#cfcbbf');
  const upright = wordsOf(drawing)
    .filter((words) => words.anchor === 'end' && isNumber(words) && inRow(words))
    .flatMap(({ at, text }) => {
      const beside = grid.find(({ points }) => Math.abs((points[0]?.[1] ?? 0) - at[1]) < 4);
      return beside === undefined ? [] : [[beside.points[0]?.[1] ?? 0, numberIn(text)] as const];
    });
  const along = wordsOf(drawing)
    .filter((words) => words.anchor === 'middle' && isNumber(words))
    .map(({ at, text }) => [at[0], numberIn(text)] as const);
  const [x, y] = [scaleOf(along), scaleOf(upright)];
  return ([atX, atY]: Point): readonly [number, number] => [x(atX), y(atY)];
}

/** Middles of the small squares that mark readings. */
export const dotsOf = (drawing: Drawing): readonly Point[] =>
  pathsOf(drawing)
    .filter(
      ({ points, closed, fill }) =>
        closed === true &&
        fill !== '#ffffff' &&
        Math.abs((points[2]?.[0] ?? 0) - (points[0]?.[0] ?? 0)) < 4,
    )
    .map(({ points }) => [
      ((points[0]?.[0] ?? 0) + (points[2]?.[0] ?? 0)) / 2,
      ((points[0]?.[1] ?? 0) + (points[2]?.[1] ?? 0)) / 2,
    ]);

export const rounded = (pairs: readonly (readonly number[])[], digits = 6) =>
  pairs.map((pair) => pair.map((value) => Number(value.toFixed(digits)) + 0));
