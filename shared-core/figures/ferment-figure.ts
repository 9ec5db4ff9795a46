import type { FermentReading } from '../ferment/index.ts';
import { usualWarmthBand } from '../ferment-warmth/index.ts';
import { say } from '../wording/index.ts';
import { type Drawing, ink, type Point, type Shape, softInk } from './drawing.ts';
import { niceTicks } from './nice-ticks.ts';
import { type Axis, box, frame, label, line, type PlotArea, place, smallPt } from './plot-area.ts';

/** The week of a ferment, as far as it goes. */
export interface FermentWeek {
  readonly readings: readonly FermentReading[];
  /** Ends of the gravity at which it should end; null where nothing tells it. */
  readonly endGravity: { readonly low: number; readonly high: number } | null;
  /** An hour at which a line stands through all rows. */
  readonly cursorH?: number;
  /** What a probe said of its warmth, where one was in it. */
  readonly warmth?: FermentWarmth;
}

/** Temperatures heard of a ferment in time order [h], [°C], and the ends between which it was to be kept. */
export interface FermentWarmth {
  readonly heard: readonly { readonly timeH: number; readonly temperatureC: number }[];
  readonly band: { readonly lowC: number; readonly highC: number };
}

const [widthPt, left, right] = [482, 52, 474];
const rowPt = 84;
const gapPt = 16;
const dayH = 24;
const fewestDays = 3;

interface Row {
  readonly name: string;
  readonly title: string;
  readonly unit: string;
  readonly points: readonly Point[];
  /** Lines through what was heard without a gap. */
  readonly tracks: readonly (readonly Point[])[];
  /** What must lie within the scale besides the points. */
  readonly also: readonly number[];
  readonly leastSpan: number;
  readonly band: { readonly low: number; readonly high: number; readonly words: string } | null;
  readonly decimals: number;
}

/**
 * A ferment's week in rows over one axis of days: gravity with its expected end, temperature with its band, bubbles, and mass. What was
 * read at moments stands as dots, joined by straight lines: it went on between them. What was never read has no row; null where there is
 * nothing to draw.
 *
 * @param week readings in time order (times [h]), the expected end (gravity)
 *
 * Source: this project's drawing; no formula.
 * @example
 * fermentFigure({ readings: [], endGravity: null }) // => null
 */
export function fermentFigure(week: FermentWeek): Drawing | null {
  const rows = rowsOf(week).filter((row) => allPoints(row).length > 0);
  if (rows.length === 0) return null;
  const lastH = Math.max(week.readings.at(-1)?.timeH ?? 0, week.warmth?.heard.at(-1)?.timeH ?? 0);
  const days = Math.max(fewestDays, Math.ceil(lastH / dayH));
  const shapes = rows.flatMap((row, index) => drawnRow(row, index, days, rows.length));
  if (week.cursorH !== undefined) shapes.push(cursorAt(week.cursorH / dayH / days, rows.length));
  return {
    widthPt,
    heightPt: rows.length * (rowPt + gapPt) + 34,
    altText: `${say('The ferment over {days} days.', { days })} ${rows.map(rowWords).join(' ')}`,
    shapes,
  };
}

function cursorAt(share: number, rows: number): Shape {
  const x = left + Math.min(1, share) * (right - left);
  const bottom = 12 + rows * (rowPt + gapPt) - gapPt;
  return line(
    [
      [x, 4],
      [x, bottom],
    ],
    '#882255',
    1.6,
  );
}

function allPoints({ points, tracks }: Row): readonly Point[] {
  return [...points, ...tracks.flat()];
}

/** A probe that said nothing for longer leaves a gap [h]. */
const gapH = 0.5;

function tracksOf({ heard }: FermentWarmth): readonly (readonly Point[])[] {
  const tracks: Point[][] = [];
  let beforeH = Number.NEGATIVE_INFINITY;
  for (const { timeH, temperatureC } of heard) {
    if (timeH - beforeH > gapH) tracks.push([]);
    tracks.at(-1)?.push([timeH, temperatureC]);
    beforeH = timeH;
  }
  return tracks;
}

function rowsOf({ readings, endGravity, warmth }: FermentWeek): readonly Row[] {
  const of = (key: 'gravity' | 'temperatureC' | 'bubblesPerMin' | 'massG'): readonly Point[] =>
    readings.flatMap(({ timeH, [key]: value }) =>
      value === null ? [] : [[timeH, value] as const],
    );
  const { lowC: low, highC: high } = warmth?.band ?? usualWarmthBand;
  return [
    {
      name: say('Gravity'),
      title: say('Gravity'),
      unit: '',
      points: of('gravity'),
      tracks: [],
      also: endGravity === null ? [] : [endGravity.low, endGravity.high],
      leastSpan: 0.02,
      band: endGravity && { ...endGravity, words: say('end expected') },
      decimals: 3,
    },
    {
      name: say('Temperature'),
      title: say('Temperature / °C'),
      unit: ' °C',
      points: of('temperatureC'),
      tracks: warmth === undefined ? [] : tracksOf(warmth),
      also: [low - 2, high + 2],
      leastSpan: 10,
      band: { low, high, words: say('{low} to {high} °C', { low, high }) },
      decimals: 1,
    },
    {
      name: say('Bubbles a minute'),
      title: say('Bubbles a minute'),
      unit: '',
      points: of('bubblesPerMin'),
      tracks: [],
      also: [0],
      leastSpan: 5,
      band: null,
      decimals: 0,
    },
    {
      name: say('Mass'),
      title: say('Mass / g'),
      unit: ' g',
      points: of('massG'),
      tracks: [],
      also: [],
      leastSpan: 10,
      band: null,
      decimals: 0,
    },
  ];
}

function drawnRow(row: Row, index: number, days: number, count: number): readonly Shape[] {
  const top = 12 + index * (rowPt + gapPt);
  const isLast = index === count - 1;
  const area: PlotArea = {
    left,
    right,
    top,
    bottom: top + rowPt,
    x: { ...dayAxis(days), title: isLast ? say('Days since it was begun') : '' },
    y: valueAxis(row),
  };
  const onPaper = (points: readonly Point[]): readonly Point[] =>
    points.map(([timeH, value]) => place(area, timeH / dayH, value));
  const placed = onPaper(row.points);
  return [
    ...(row.band === null ? [] : bandOf(area, row.band)),
    ...frame(isLast ? area : { ...area, x: { ...area.x, ticks: [] } }),
    ...row.tracks.map((track) => line(onPaper(track), ink, 0.9)),
    // Between two readings by hand a probe tells more than a straight line.
    ...(row.tracks.length > 0 ? [] : [line(placed, ink, 1.2)]),
    ...placed.map(([x, y]) => box(x - 1.8, y - 1.8, x + 1.8, y + 1.8, ink)),
  ];
}

function dayAxis(days: number): Axis {
  const every = Math.ceil(days / 14);
  const ticks = Array.from({ length: Math.floor(days / every) + 1 }, (_, index) => index * every);
  return {
    low: 0,
    high: days,
    title: '',
    ticks: ticks.map((at) => ({ at, words: String(at) })),
  };
}

function valueAxis(row: Row): Axis {
  const { title, also, leastSpan, decimals } = row;
  const values = [...allPoints(row).map(([, value]) => value), ...also];
  const least = Math.min(...values);
  const most = Math.max(...values);
  const spare = Math.max(0, leastSpan - (most - least)) / 2 + 0.06 * (most - least);
  const isCount = also.includes(0);
  const [low, high] = [isCount ? 0 : least - spare, most + spare];
  const ticks = niceTicks(low, high, 5);
  const digits = Math.min(Math.max(ticks.decimals, decimals === 3 ? 3 : 0), 3);
  return {
    low,
    high,
    title,
    ticks: ticks.values.map((at) => ({ at, words: at.toFixed(digits) })),
  };
}

function bandOf(area: PlotArea, band: NonNullable<Row['band']>): readonly Shape[] {
  const [, top] = place(area, 0, band.high);
  const [, bottom] = place(area, 0, band.low);
  return [
    box(area.left, top, area.right, bottom, '#d5ebd9'),
    ...[top, bottom].map((y) =>
      line(
        [
          [area.left, y],
          [area.right, y],
        ],
        '#117733',
        0.8,
        [5, 3],
      ),
    ),
    // A band too thin for its words has them above.
    label(
      [area.right - 4, bottom - top < smallPt + 4 ? top - 3 : bottom - 3],
      band.words,
      'end',
      softInk,
    ),
  ];
}

function rowWords(row: Row): string {
  const { name, unit, points, tracks, band, decimals } = row;
  const words = (value: number | undefined) => `${(value ?? 0).toFixed(decimals)}${unit}`;
  const told = tracks.length > 0 ? tracks.flat() : points;
  const values = told.map(([, value]) => value);
  const course = say(
    '{name}: {count, plural, one {# reading} other {# readings}}, first {first}, last {last}, {least} to {most}',
    {
      name,
      count: told.length,
      first: words(values[0]),
      last: words(values.at(-1)),
      least: words(Math.min(...values)),
      most: words(Math.max(...values)),
    },
  );
  return band === null
    ? `${course}.`
    : say('{course}; shaded from {low} to {high}.', {
        course,
        low: words(band.low),
        high: words(band.high),
      });
}
