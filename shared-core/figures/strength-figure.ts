import { unbrokenStretches } from '../series/index.ts';
import type { RunStudy } from '../study/index.ts';
import { type Drawing, ink, type Point } from './drawing.ts';
import { niceTicks, timeTicks } from './nice-ticks.ts';
import { frame, importedNote, label, line, type PlotArea, place } from './plot-area.ts';
import { reducedLine, type TimedValue } from './run-lines.ts';
import { figureWidthPt } from './temperature-figure.ts';
import { axisTimeWords } from './time-words.ts';

/** Strength of the head vapour as the monitor told it, with its 95 % interval; null where it told none for a minute. */
export function strengthFigure({ rows, name, settings, imported }: RunStudy): Drawing | null {
  const bathed = rows.flatMap(({ timeS, vapourAbv }) =>
    vapourAbv === null ? [] : [{ timeS, vapourAbv }],
  );
  const [first, last] = [bathed[0], bathed.at(-1)];
  if (first === undefined || last === undefined || last.timeS - first.timeS < 60) return null;
  const lowest = bathed.reduce((least, { vapourAbv }) => Math.min(least, vapourAbv.low), 100);
  const low = Math.max(0, 10 * Math.floor(Math.min(lowest, settings.leastStrengthAbv - 5) / 10));
  const ticks = niceTicks(low, 100, 7);
  const area: PlotArea = {
    left: 46,
    top: 12,
    right: figureWidthPt - 8,
    bottom: 180,
    x: {
      low: first.timeS,
      high: last.timeS,
      title: 'Time since the run began',
      ticks: timeTicks(first.timeS, last.timeS, 8).map((at) => ({ at, words: axisTimeWords(at) })),
    },
    y: {
      low,
      high: 100,
      title: 'Head vapour / % vol',
      ticks: ticks.values.map((at) => ({ at, words: at.toFixed(ticks.decimals) })),
    },
  };
  // Silences are found before averaging: means are as far apart as the figure is narrow, not as the readings were.
  const stretches = unbrokenStretches(bathed).filter(({ length }) => length > 1);
  const sliceS = (last.timeS - first.timeS) / meansDrawn;
  const lines = (of: 'value' | 'low' | 'high') =>
    stretches.map((stretch) =>
      reducedLine(
        area,
        means(
          stretch.map(({ timeS, vapourAbv }) => ({ timeS, value: vapourAbv[of] })),
          sliceS,
        ),
      ),
    );
  const [left, limit] = place(area, first.timeS, settings.leastStrengthAbv);
  return {
    widthPt: figureWidthPt,
    heightPt: 216,
    altText: `Strength of the head vapour of “${name}” with its 95 % interval, from ${first.vapourAbv.value.toFixed(0)} to ${last.vapourAbv.value.toFixed(0)} % vol.`,
    shapes: [
      ...bands(lines('low'), lines('high')),
      ...frame(area),
      ...importedNote(area, imported === true),
      line(
        [
          [left, limit],
          [area.right, limit],
        ],
        '#117733',
        0.8,
        [5, 3],
      ),
      label(
        [area.left + 5, limit + 10],
        `limit: ${settings.leastStrengthAbv} % vol`,
        'start',
        '#0f5a2b',
      ),
      ...lines('value').map((points) => line(points, ink, 1.2)),
    ],
  };
}

const meansDrawn = 240;

/**
 * Means over equal slices of time: the interval is what matters here, not the probe's last digit. The ends stay where
 * they are, so that a short stretch keeps its length.
 */
function means(points: readonly TimedValue[], sliceS: number): readonly TimedValue[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || last.timeS - first.timeS < 2 * sliceS) {
    return points;
  }
  const slices = new Map<number, TimedValue[]>();
  for (const point of points) {
    const slice = Math.floor((point.timeS - first.timeS) / sliceS);
    const known = slices.get(slice);
    if (known === undefined) slices.set(slice, [point]);
    else known.push(point);
  }
  const inside = [...slices.values()].map((slice) => ({
    timeS: slice.reduce((sum, { timeS }) => sum + timeS, 0) / slice.length,
    value: slice.reduce((sum, { value }) => sum + value, 0) / slice.length,
  }));
  return inside.map((mean, index) =>
    index === 0
      ? { ...mean, timeS: first.timeS }
      : index === inside.length - 1
        ? { ...mean, timeS: last.timeS }
        : mean,
  );
}

function bands(lows: readonly (readonly Point[])[], highs: readonly (readonly Point[])[]) {
  return lows.flatMap((lower, index) => {
    const upper = highs[index];
    if (upper === undefined) return [];
    const points = [...lower, ...upper.toReversed()];
    return [{ kind: 'path', points, closed: true, fill: '#e3e0ee' } as const];
  });
}
