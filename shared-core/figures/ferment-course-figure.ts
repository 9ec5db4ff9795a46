import type { NinetyInterval } from '../ferment/index.ts';
import { lineStrokes } from './colours.ts';
import { type Drawing, ink, type Point } from './drawing.ts';
import { lineKey, lineKeyPt, strokeOfLine } from './line-key.ts';
import { niceTicks } from './nice-ticks.ts';
import { box, frame, line, type PlotArea, place } from './plot-area.ts';
import { figureWidthPt } from './temperature-figure.ts';

/** A strength at an hour of a ferment, with its 90 % interval. */
interface StrengthAt {
  readonly timeH: number;
  readonly strengthAbv: NinetyInterval;
}

const dayH = 24;
const fewestDays = 3;

function dayTicks(days: number) {
  const every = Math.ceil(days / 14);
  return Array.from({ length: Math.floor(days / every) + 1 }, (_, index) => ({
    at: index * every,
    words: String(index * every),
  }));
}

function daysArea(
  lastH: number,
  low: number,
  high: number,
  title: string,
  decimals: number,
): PlotArea {
  const days = Math.max(fewestDays, Math.ceil(lastH / dayH));
  const ticks = niceTicks(low, high, 7);
  const digits = Math.max(decimals, ticks.decimals);
  return {
    left: 52,
    top: 12,
    right: figureWidthPt - 8,
    bottom: 180,
    x: { low: 0, high: days, title: 'Days since it was begun', ticks: dayTicks(days) },
    y: {
      low,
      high,
      title,
      ticks: ticks.values.map((at) => ({ at, words: at.toFixed(digits) })),
    },
  };
}

/**
 * How strong a ferment was judged to be after each reading, with the 90 % interval; null for fewer than two judgements.
 *
 * @param course hours since it was begun and strengths [% vol], in time order
 *
 * Source: this project's drawing; no formula.
 * @example
 * fermentStrengthFigure([]) // => null
 */
export function fermentStrengthFigure(course: readonly StrengthAt[]): Drawing | null {
  const [first, last] = [course[0], course.at(-1)];
  if (first === undefined || last === undefined || course.length < 2) return null;
  const most = Math.max(1, ...course.map(({ strengthAbv }) => strengthAbv.high));
  const area = daysArea(last.timeH, 0, 1.08 * most, 'Strength / % vol', 0);
  const points = (of: keyof NinetyInterval): readonly Point[] =>
    course.map(({ timeH, strengthAbv }) => place(area, timeH / dayH, Math.max(0, strengthAbv[of])));
  const values = points('value');
  const { low, value, high } = last.strengthAbv;
  return {
    widthPt: figureWidthPt,
    heightPt: 216,
    altText: `Strength by the log after each reading: at last ${value.toFixed(1)} % vol, 90 % interval ${low.toFixed(1)} to ${high.toFixed(1)} % vol.`,
    shapes: [
      {
        kind: 'path',
        points: [...points('low'), ...points('high').toReversed()],
        closed: true,
        fill: '#e3e0ee',
      },
      ...frame(area),
      line(values, ink, 1.2),
      ...values.map(([x, y]) => box(x - 1.8, y - 1.8, x + 1.8, y + 1.8, ink)),
    ],
  };
}

/** A ferment's gravities at 20 °C, to be laid over those of others. */
export interface GravityLine {
  readonly name: string;
  readonly readings: readonly { readonly timeH: number; readonly gravity: number }[];
}

/** Gravities of several ferments over the days since each was begun; null for fewer than two, and for more than can be told apart. */
export function gravitiesFigure(ferments: readonly GravityLine[]): Drawing | null {
  if (ferments.length < 2 || ferments.length > lineStrokes.length) return null;
  const all = ferments.flatMap(({ readings }) => readings);
  if (all.length === 0) return null;
  const values = all.map(({ gravity }) => gravity);
  const spare = 0.004;
  const area = daysArea(
    Math.max(...all.map(({ timeH }) => timeH)),
    Math.min(...values) - spare,
    Math.max(...values) + spare,
    'Gravity at 20 °C',
    3,
  );
  return {
    widthPt: figureWidthPt,
    heightPt: 216 + lineKeyPt * ferments.length,
    altText: `Gravities of ${ferments.length} ferments over the days since each was begun.`,
    shapes: [
      ...frame(area),
      ...ferments.flatMap(({ readings, name }, index) => {
        const { colour, widthPt, dash } = strokeOfLine(index);
        const points = readings.map(({ timeH, gravity }) => place(area, timeH / dayH, gravity));
        return [
          ...(points.length < 2 ? [] : [line(points, colour, widthPt, dash)]),
          ...points.map(([x, at]) => box(x - 1.8, at - 1.8, x + 1.8, at + 1.8, colour)),
          ...lineKey(area, index, name),
        ];
      }),
    ],
  };
}
