import { type Drawing, ink, type Shape, softInk } from './drawing.ts';
import { niceTicks } from './nice-ticks.ts';
import { frame, label, line, type PlotArea, place } from './plot-area.ts';
import { figureWidthPt } from './temperature-figure.ts';
import { type Texture, texturedBox } from './textures.ts';

/** A mass on its way from one thing to the next. */
export interface BalanceStep {
  readonly name: string;
  readonly grams: number;
  /** Ends of its interval. */
  readonly low: number;
  readonly high: number;
  /** The value in words with its unit. */
  readonly words: string;
  readonly colour: string;
  readonly texture: Texture;
}

const rowPt = 30;
const [left, top] = [150, 10];

/**
 * Masses one under the other, each as a bar with a whisker over its interval: what came of what. Null for none.
 *
 * @param steps in their order; grams, low and high [g] ≥ 0
 * @param title of the axis, with its unit
 *
 * Source: this project's drawing; no formula.
 * @example
 * stepsFigure([], 'Ethanol / g') // => null
 */
export function stepsFigure(steps: readonly BalanceStep[], title: string): Drawing | null {
  if (steps.length === 0) return null;
  const most = Math.max(...steps.map(({ grams, high }) => Math.max(grams, high)));
  const ticks = niceTicks(0, most, 6);
  const bottom = top + rowPt * steps.length;
  const area: PlotArea = {
    left,
    top,
    right: figureWidthPt - 96,
    bottom,
    x: {
      low: 0,
      high: 1.02 * most,
      title,
      ticks: ticks.values.map((at) => ({ at, words: at.toFixed(ticks.decimals) })),
    },
    y: { low: 0, high: 1, title: '', ticks: [] },
  };
  return {
    widthPt: figureWidthPt,
    heightPt: bottom + 36,
    altText: `${title}: ${steps.map(({ name, words }) => `${name} ${words}`).join('; ')}.`,
    shapes: [...frame(area), ...steps.flatMap((step, index) => drawnStep(area, step, index))],
  };
}

function drawnStep(area: PlotArea, step: BalanceStep, index: number): readonly Shape[] {
  const from = top + rowPt * index + 5;
  const to = from + rowPt - 10;
  const middle = (from + to) / 2;
  const [x] = place(area, step.grams, 0);
  const [low] = place(area, step.low, 0);
  const [high] = place(area, step.high, 0);
  const upright = (at: number): Shape =>
    line(
      [
        [at, middle - 5],
        [at, middle + 5],
      ],
      ink,
      1.2,
    );
  return [
    ...(x > left ? texturedBox(left, from, x, to, step.colour, step.texture) : []),
    line(
      [
        [low, middle],
        [high, middle],
      ],
      ink,
      1.2,
    ),
    upright(low),
    upright(high),
    label([left - 6, middle + 3], step.name, 'end'),
    label([Math.max(x, high) + 6, middle + 3], step.words, 'start', softInk),
  ];
}
