import type { ExpectedPoint, RunByVolume } from '../by-volume/index.ts';
import { limitTemperatureC } from '../equilibrium/index.ts';
import type { RunStudy } from '../study/index.ts';
import { say } from '../wording/index.ts';
import { type Drawing, ink, type Point, type Shape } from './drawing.ts';
import { niceTicks } from './nice-ticks.ts';
import {
  box,
  frame,
  importedNote,
  label,
  line,
  type PlotArea,
  place,
  smallPt,
  wordsWidthPt,
} from './plot-area.ts';
import { figureWidthPt } from './temperature-figure.ts';

/** What of theory a figure against volume shows; a worksheet hides it. */
export interface VolumeFigureDetail {
  readonly expected: boolean;
}

/** What of a run the figures against volume show. */
export type RunOfVolumes = Pick<RunStudy, 'byVolume' | 'settings' | 'name' | 'imported'>;

/** Head temperature against the volume of distillate, beside what a simple still and the column would give; null without volumes. */
export function temperatureByVolumeFigure(
  study: RunOfVolumes,
  detail: VolumeFigureDetail,
): Drawing | null {
  const { byVolume, settings } = study;
  if (byVolume === null) return null;
  const { leastStrengthAbv } = settings;
  const limitC = limitTemperatureC({ leastStrengthAbv, pressureKPa: byVolume.pressureKPa });
  const measured = byVolume.course.map(({ volumeMl, headC }) => ({ volumeMl, value: headC }));
  const curves = detail.expected ? expectedCurves(byVolume, ({ headC }) => headC) : [];
  const values = [...measured, ...curves.flatMap(({ points }) => points)].map(({ value }) => value);
  const area = volumeArea(
    study,
    say('Head temperature / °C'),
    Math.min(...values, limitC) - 1,
    Math.max(...values, limitC) + 1,
  );
  const last = measured.at(-1);
  return drawing(study, area, measured, curves, {
    limit: detail.expected ? { at: limitC, words: limitWords(leastStrengthAbv) } : null,
    altText: say(
      'Head temperature of “{name}” against the volume of distillate: from {first} to {last} °C at {volume} mL.',
      {
        name: study.name,
        first: measured[0]?.value.toFixed(1) ?? '–',
        last: last?.value.toFixed(1) ?? '–',
        volume: last?.volumeMl.toFixed(1) ?? '–',
      },
    ),
  });
}

/** Strength of what comes over against the volume of distillate, with its 95 % interval; null without volumes or vapour. */
export function strengthByVolumeFigure(study: RunOfVolumes): Drawing | null {
  const { byVolume, settings } = study;
  const wet = (byVolume?.course ?? []).flatMap(({ volumeMl, vapourAbv }) =>
    vapourAbv === null ? [] : [{ volumeMl, vapourAbv }],
  );
  const [first, last] = [wet[0], wet.at(-1)];
  if (byVolume === null || first === undefined || last === undefined || wet.length < 2) return null;
  const measured = wet.map(({ volumeMl, vapourAbv }) => ({ volumeMl, value: vapourAbv.value }));
  const curves = expectedCurves(byVolume, ({ strengthAbv }) => strengthAbv);
  const lowest = Math.min(
    ...wet.map(({ vapourAbv }) => vapourAbv.low),
    ...curves.flatMap(({ points }) => points.map(({ value }) => value)),
    settings.leastStrengthAbv - 5,
  );
  const area = volumeArea(
    study,
    say('Vapour / % vol'),
    Math.max(0, 10 * Math.floor(lowest / 10)),
    100,
  );
  const edge = (of: 'low' | 'high') =>
    wet.map(({ volumeMl, vapourAbv }) => place(area, volumeMl, vapourAbv[of]));
  return drawing(study, area, measured, curves, {
    limit: { at: settings.leastStrengthAbv, words: limitWords(settings.leastStrengthAbv) },
    altText: say(
      'Strength of the vapour of “{name}” against the volume of distillate, from {first} to {last} % vol.',
      {
        name: study.name,
        first: first.vapourAbv.value.toFixed(0),
        last: last.vapourAbv.value.toFixed(0),
      },
    ),
    under: [
      {
        kind: 'path',
        points: [...edge('low'), ...edge('high').toReversed()],
        closed: true,
        fill: '#e3e0ee',
      },
    ],
  });
}

const limitWords = (leastStrengthAbv: number) =>
  say('limit: {leastStrength} % vol', { leastStrength: leastStrengthAbv });

interface VolumeValue {
  readonly volumeMl: number;
  readonly value: number;
}

interface ExpectedCurve {
  readonly name: string;
  readonly points: readonly VolumeValue[];
  readonly colour: string;
  readonly dash: readonly number[];
}

function expectedCurves(
  { rayleigh, rectified }: RunByVolume,
  of: (point: ExpectedPoint) => number,
): readonly ExpectedCurve[] {
  const curve = (
    name: string,
    points: readonly ExpectedPoint[] | null,
    colour: string,
    dash: readonly number[],
  ) =>
    points === null
      ? []
      : [
          {
            name,
            colour,
            dash,
            points: points.map((point) => ({ volumeMl: point.volumeMl, value: of(point) })),
          },
        ];
  return [
    ...curve(say('simple still (Rayleigh)'), rayleigh, '#882255', [6, 3]),
    ...curve(say('the column at the reflux entered'), rectified, '#332288', [2, 2]),
  ];
}

function volumeArea(
  { byVolume }: RunOfVolumes,
  yTitle: string,
  low: number,
  high: number,
): PlotArea {
  const highMl = byVolume?.course.at(-1)?.volumeMl ?? 1;
  const x = niceTicks(0, highMl, 9);
  const y = niceTicks(low, high, 7);
  return {
    left: 46,
    top: 12,
    right: figureWidthPt - 8,
    bottom: 196,
    x: {
      low: 0,
      high: highMl,
      title: say('Distillate / mL'),
      ticks: x.values.map((at) => ({ at, words: at.toFixed(x.decimals) })),
    },
    y: {
      low,
      high,
      title: yTitle,
      ticks: y.values.map((at) => ({ at, words: at.toFixed(y.decimals) })),
    },
  };
}

/** More readings than this are a line; fewer are points on one. */
const mostDots = 40;
const keyRowPt = 13;

function drawing(
  study: RunOfVolumes,
  area: PlotArea,
  measured: readonly VolumeValue[],
  curves: readonly ExpectedCurve[],
  more: {
    readonly limit: { readonly at: number; readonly words: string } | null;
    readonly altText: string;
    readonly under?: readonly Shape[];
  },
): Drawing {
  const points = (values: readonly VolumeValue[]): readonly Point[] =>
    values.map(({ volumeMl, value }) => place(area, volumeMl, value));
  const keys = [
    { name: say('measured'), colour: ink, dash: undefined },
    ...curves.map(({ name, colour, dash }) => ({ name, colour, dash })),
  ];
  const keyTop = area.bottom + 46;
  return {
    widthPt: figureWidthPt,
    heightPt: keyTop + (curves.length === 0 ? -6 : keyRowPt * keys.length),
    altText: more.altText,
    shapes: [
      ...(more.under ?? []),
      ...frame(area),
      ...importedNote(area, study.imported === true),
      ...(more.limit === null
        ? []
        : limitLine(
            area,
            more.limit,
            [points(measured), ...curves.map((curve) => points(curve.points))].flat(),
          )),
      ...curves.map(({ points: values, colour, dash }) => line(points(values), colour, 1, dash)),
      line(points(measured), ink, 1.2),
      ...(measured.length > mostDots
        ? []
        : points(measured).map(([x, y]) => box(x - 1.6, y - 1.6, x + 1.6, y + 1.6, ink))),
      ...(curves.length === 0
        ? []
        : keys.flatMap(({ name, colour, dash }, row) => {
            const y = keyTop + keyRowPt * row;
            return [
              line(
                [
                  [area.left, y - 3],
                  [area.left + 28, y - 3],
                ],
                colour,
                1.2,
                dash,
              ),
              label([area.left + 34, y], name, 'start'),
            ];
          })),
    ],
  };
}

function limitLine(
  area: PlotArea,
  { at, words }: { readonly at: number; readonly words: string },
  drawn: readonly Point[],
): readonly Shape[] {
  const [, y] = place(area, area.x.low, at);
  const width = wordsWidthPt(words, smallPt);
  // The words stand at the end of the line that is farther from every curve.
  const room = (left: number) =>
    drawn
      .filter(([x]) => x >= left - 4 && x <= left + width + 4)
      .reduce((least, [, height]) => Math.min(least, Math.abs(height - (y - 6))), 1000);
  const [left, right] = [area.left + 4, area.right - 4 - width];
  return [
    line(
      [
        [area.left, y],
        [area.right, y],
      ],
      '#117733',
      0.8,
      [5, 3],
    ),
    room(left) > room(right)
      ? label([left, y - 3], words, 'start', '#0f5a2b')
      : label([area.right - 4, y - 3], words, 'end', '#0f5a2b'),
  ];
}
