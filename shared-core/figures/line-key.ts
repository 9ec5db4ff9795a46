import { lineStrokes } from './colours.ts';
import { type Shape, type Stroke, softInk } from './drawing.ts';
import { label, line, type PlotArea } from './plot-area.ts';

/** Height of a row of the key under a plot of several lines [pt]. */
export const lineKeyPt = 12;

/** The stroke of one of several lines. */
export function strokeOfLine(index: number): Stroke {
  return lineStrokes[index] ?? { colour: softInk, widthPt: 1 };
}

/** One row of the key: a piece of the line, its number and its name. */
export function lineKey(area: PlotArea, index: number, name: string): readonly Shape[] {
  const y = area.bottom + 44 + lineKeyPt * index;
  const { colour, widthPt, dash } = strokeOfLine(index);
  return [
    line(
      [
        [area.left, y - 3],
        [area.left + 34, y - 3],
      ],
      colour,
      widthPt,
      dash,
    ),
    label([area.left + 42, y], `${index + 1}  ${name}`, 'start'),
  ];
}
