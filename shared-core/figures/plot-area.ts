import { say } from '../wording/index.ts';
import { ink, type Point, rule, type Shape, softInk } from './drawing.ts';

/** One axis: the ends of its scale, its title and where ticks stand with what words. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly title: string;
  readonly ticks: readonly { readonly at: number; readonly words: string }[];
}

/** A rectangle of a drawing with two scales. */
export interface PlotArea {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly x: Axis;
  readonly y: Axis;
}

export const smallPt = 8.5;
export const bodyPt = 9.5;

/** Where a pair of values lies; outside the scales it is brought to the edge. */
export function place(
  { left, right, top, bottom, x, y }: PlotArea,
  atX: number,
  atY: number,
): Point {
  const share = ({ low, high }: Axis, value: number) =>
    Math.min(1, Math.max(0, (value - low) / (high - low)));
  return [left + share(x, atX) * (right - left), bottom - share(y, atY) * (bottom - top)];
}

/** Frame, grid, ticks and titles; drawn first, under everything else. */
export function frame(area: PlotArea): readonly Shape[] {
  const { left, top, right, bottom, x, y } = area;
  const shapes: Shape[] = [];
  for (const { at, words } of y.ticks) {
    const [, height] = place(area, x.low, at);
    shapes.push(
      line(
        [
          [left, height],
          [right, height],
        ],
        rule,
        0.6,
      ),
    );
    shapes.push(label([left - 5, height + 3], words, 'end', softInk));
  }
  for (const { at, words } of x.ticks) {
    const [along] = place(area, at, y.low);
    shapes.push(
      line(
        [
          [along, bottom],
          [along, bottom + 4],
        ],
        softInk,
        0.8,
      ),
    );
    shapes.push(label([along, bottom + 14], words, 'middle', softInk));
  }
  shapes.push(
    line(
      [
        [left, top],
        [left, bottom],
        [right, bottom],
      ],
      softInk,
      0.8,
    ),
  );
  shapes.push({
    ...label([(left + right) / 2, bottom + 28], x.title, 'middle', ink),
    sizePt: bodyPt,
  });
  shapes.push({
    ...label([left - 38, (top + bottom) / 2], y.title, 'middle', ink),
    sizePt: bodyPt,
    upright: true,
  });
  return shapes;
}

/** Says of a figure that its readings came from a file of another logger; nothing for this program's own. */
export function importedNote({ right, bottom }: PlotArea, isImported: boolean): readonly Shape[] {
  return isImported ? [label([right, bottom + 28], say('imported readings'), 'end', softInk)] : [];
}

export function line(
  points: readonly Point[],
  colour: string,
  widthPt: number,
  dash?: readonly number[],
): Shape {
  return {
    kind: 'path',
    points,
    stroke: { colour, widthPt, ...(dash === undefined ? {} : { dash }) },
  };
}

export function label(
  at: Point,
  text: string,
  anchor: 'start' | 'middle' | 'end',
  colour: string = ink,
): Extract<Shape, { kind: 'text' }> {
  return { kind: 'text', at, text, sizePt: smallPt, anchor, colour };
}

export function box(
  left: number,
  top: number,
  right: number,
  bottom: number,
  fill: string,
  stroke?: string,
): Shape {
  return {
    kind: 'path',
    points: [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    closed: true,
    fill,
    ...(stroke === undefined ? {} : { stroke: { colour: stroke, widthPt: 0.6 } }),
  };
}

/** Rough width of words in the report's typeface [pt]: enough to see whether a label fits. */
export function wordsWidthPt(text: string, sizePt: number): number {
  return 0.5 * sizePt * text.length;
}
