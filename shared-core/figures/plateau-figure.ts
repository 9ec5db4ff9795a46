import { azeotrope, limitTemperatureC } from '../equilibrium/index.ts';
import type { RunStudy } from '../study/index.ts';
import { type Drawing, ink, softInk } from './drawing.ts';
import { timeTicks } from './nice-ticks.ts';
import { box, frame, label, line, type PlotArea, place } from './plot-area.ts';
import { runLine } from './run-lines.ts';
import { figureWidthPt } from './temperature-figure.ts';
import { axisTimeWords } from './time-words.ts';

/** More lines than this stand too close to be read. */
const mostLines = 16;

/**
 * The curve around the plateau with a line for every degree, so that a tenth or two can be read off; null without a
 * plateau. Only `solved` shows where it lies.
 */
export function plateauFigure(study: RunStudy, solved: boolean): Drawing | null {
  const { plateau, settings, rows, name } = study;
  if (plateau === null) return null;
  const { pressureKPa, statistics } = plateau;
  const { leastStrengthAbv } = settings;
  const limitC = limitTemperatureC({ leastStrengthAbv, pressureKPa });
  const low = Math.floor(
    Math.min(azeotrope(pressureKPa).temperatureC - 1.5, statistics.lowestC - 0.5),
  );
  const high = Math.ceil(limitC + 1.5);
  const inside = rows.filter(({ headC }) => headC >= low && headC <= high);
  const [first, last] = [inside[0], inside.at(-1)];
  if (first === undefined || last === undefined || last.timeS <= first.timeS) return null;
  const stepK = high - low > mostLines ? 2 : 1;
  const degrees = Array.from({ length: Math.floor((high - low) / stepK) + 1 }, (_, index) => {
    const at = low + stepK * index;
    return { at, words: String(at) };
  });
  const area: PlotArea = {
    left: 46,
    top: 10,
    right: figureWidthPt - 8,
    bottom: 250,
    x: {
      low: first.timeS,
      high: last.timeS,
      title: 'Time since the run began',
      ticks: timeTicks(first.timeS, last.timeS, 10).map((at) => ({ at, words: axisTimeWords(at) })),
    },
    y: { low, high, title: 'Head temperature / °C', ticks: degrees },
  };
  const { fromS, toS } = statistics.span;
  const [from, top] = place(area, fromS, statistics.highestC);
  const [to, bottom] = place(area, toS, statistics.lowestC);
  const points = inside.map(({ timeS, headC }) => ({ timeS, value: headC }));
  return {
    widthPt: figureWidthPt,
    heightPt: 286,
    altText: `Head temperature of “${name}” between ${low} and ${high} °C, with a line for every ${stepK === 1 ? 'degree' : 'two degrees'}.`,
    shapes: [
      ...(solved ? [box(from, top, to, bottom, '#d5ebd9')] : []),
      ...frame(area),
      ...(solved
        ? [
            line(
              [
                [from, area.top],
                [from, area.bottom],
              ],
              softInk,
              0.8,
              [4, 3],
            ),
            line(
              [
                [to, area.top],
                [to, area.bottom],
              ],
              softInk,
              0.8,
              [4, 3],
            ),
            label([(from + to) / 2, area.bottom - 6], 'plateau', 'middle'),
          ]
        : []),
      ...runLine(area, points, { colour: ink, widthPt: 1.1 }),
    ],
  };
}
