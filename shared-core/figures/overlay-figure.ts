import type { RunStudy } from '../study/index.ts';
import { lineStrokes } from './colours.ts';
import type { Drawing } from './drawing.ts';
import { lineKey, lineKeyPt, strokeOfLine } from './line-key.ts';
import { niceTicks, timeTicks } from './nice-ticks.ts';
import { frame, type PlotArea } from './plot-area.ts';
import { runLine } from './run-lines.ts';
import { figureWidthPt } from './temperature-figure.ts';
import { axisTimeWords } from './time-words.ts';

/** Several runs on one scale, from the arrival of vapour where it is known; null for fewer than two, and for more than can be told apart. */
export function overlayFigure(studies: readonly RunStudy[]): Drawing | null {
  if (studies.length < 2 || studies.length > lineStrokes.length) return null;
  const shifted = studies.map(({ rows, verdicts }) => {
    const originS = verdicts.events.find(({ event }) => event === 'vapour-arrived')?.timeS ?? 0;
    return rows.flatMap(({ timeS, headC }) =>
      timeS - originS >= -120 && headC >= 60 ? [{ timeS: timeS - originS, value: headC }] : [],
    );
  });
  const endS = shifted.reduce((end, points) => Math.max(end, points.at(-1)?.timeS ?? 0), 60);
  const ticks = niceTicks(60, 103, 8);
  const area: PlotArea = {
    left: 46,
    top: 10,
    right: figureWidthPt - 8,
    bottom: 218,
    x: {
      low: -120,
      high: endS,
      title: 'Time since vapour reached the head',
      ticks: timeTicks(-120, endS, 8).map((at) => ({
        at,
        words: at < 0 ? `−${axisTimeWords(-at)}` : axisTimeWords(at),
      })),
    },
    y: {
      low: 60,
      high: 103,
      title: 'Head temperature / °C',
      ticks: ticks.values.map((at) => ({ at, words: at.toFixed(ticks.decimals) })),
    },
  };
  return {
    widthPt: figureWidthPt,
    heightPt: 254 + lineKeyPt * studies.length,
    altText: `Head temperatures of ${studies.length} runs, counted from the arrival of vapour.`,
    shapes: [
      ...frame(area),
      ...shifted.flatMap((points, index) => runLine(area, points, strokeOfLine(index))),
      ...studies.flatMap(({ name, runId, imported }, index) =>
        lineKey(area, index, `${name} (${runId}${imported === true ? ', imported' : ''})`),
      ),
    ],
  };
}
