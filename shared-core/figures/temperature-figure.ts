import { azeotrope, limitTemperatureC } from '../equilibrium/index.ts';
import type { RunStudy } from '../report/index.ts';
import { type MarkType, standingMarks } from '../run/index.ts';
import { stageLabels } from '../snapshot/index.ts';
import { type Drawing, ink, type Shape, softInk } from './drawing.ts';
import { niceTicks, timeTicks } from './nice-ticks.ts';
import {
  box,
  frame,
  label,
  line,
  type PlotArea,
  place,
  smallPt,
  wordsWidthPt,
} from './plot-area.ts';
import { runLine } from './run-lines.ts';
import { stagePaint, texturedBox } from './textures.ts';
import { axisTimeWords } from './time-words.ts';

/** What of the tool's judgement a figure shows; a worksheet hides it. */
export interface FigureDetail {
  readonly stages: boolean;
  readonly plateauBand: boolean;
}

export const figureWidthPt = 482;
const markLetters: Partial<Record<MarkType, string>> = {
  'heat-on': 'heat on',
  'heat-eased': 'eased',
  'heat-off': 'heat off',
  'receiver-changed': 'receiver',
};

/** Head temperature against time, with the band of the main fraction, the marks and the stages below. */
export function temperatureFigure(study: RunStudy, detail: FigureDetail): Drawing {
  const { rows, endS, settings, plateau } = study;
  const temperatures = rows.map(({ headC }) => headC);
  const low = Math.min(20, ...extremes(temperatures, Math.min));
  const high = Math.max(85, ...extremes(temperatures, Math.max)) + 3;
  const ticks = niceTicks(low, high, 8);
  const area: PlotArea = {
    left: 46,
    top: 30,
    right: figureWidthPt - 8,
    bottom: 218,
    x: {
      low: 0,
      high: Math.max(60, endS),
      title: 'Time since the run began',
      ticks: timeTicks(0, Math.max(60, endS), 8).map((at) => ({ at, words: axisTimeWords(at) })),
    },
    y: {
      low,
      high,
      title: 'Head temperature / °C',
      ticks: ticks.values.map((at) => ({ at, words: at.toFixed(ticks.decimals) })),
    },
  };
  const pressureKPa = plateau?.pressureKPa ?? settings.pressure.pressureKPa;
  const points = rows.map(({ timeS, headC }) => ({ timeS, value: headC }));
  return {
    widthPt: figureWidthPt,
    heightPt: detail.stages ? 288 : 254,
    altText: altText(study, detail),
    shapes: [
      ...(detail.plateauBand ? band(area, pressureKPa, settings.leastStrengthAbv) : []),
      ...frame(area),
      ...marks(area, study),
      ...runLine(area, points, { colour: ink, widthPt: 1.2 }),
      ...(detail.stages ? stageStrip(area, study) : []),
    ],
  };
}

/** Spreading ten thousand arguments into Math.max is slow and has an end. */
function extremes(values: readonly number[], pick: (...of: number[]) => number): number[] {
  return values.length === 0 ? [] : [values.reduce((best, value) => pick(best, value))];
}

function band(area: PlotArea, pressureKPa: number, leastStrengthAbv: number): readonly Shape[] {
  const [, top] = place(area, 0, limitTemperatureC({ leastStrengthAbv, pressureKPa }));
  const [, bottom] = place(area, 0, azeotrope(pressureKPa).temperatureC);
  return [
    box(area.left, top, area.right, bottom, '#d5ebd9'),
    line(
      [
        [area.left, top],
        [area.right, top],
      ],
      '#117733',
      0.8,
      [5, 3],
    ),
    line(
      [
        [area.left, bottom],
        [area.right, bottom],
      ],
      '#117733',
      0.8,
    ),
    label([area.left + 5, top - 3], `limit: ${leastStrengthAbv} % vol`, 'start', '#0f5a2b'),
    label(
      [area.left + 5, bottom + 9],
      `azeotrope at ${pressureKPa.toFixed(1)} kPa`,
      'start',
      '#0f5a2b',
    ),
  ];
}

/** What people did, as dated flags along the top; words that would overlap go up a row. */
function marks(area: PlotArea, { inputs }: RunStudy): readonly Shape[] {
  const rowEnds = [0, 0];
  return standingMarks(inputs).flatMap(({ timeS, mark }): Shape[] => {
    const words = markLetters[mark.type];
    if (words === undefined) return [];
    const [x] = place(area, timeS, area.y.low);
    const half = wordsWidthPt(words, smallPt) / 2;
    const row = rowEnds.findIndex((end) => x - half > end);
    const height = area.top - 4 - 10 * Math.max(0, row);
    if (row !== -1) rowEnds[row] = x + half + 3;
    return [
      line(
        [
          [x, area.top],
          [x, area.bottom],
        ],
        softInk,
        0.6,
        [1, 3],
      ),
      ...(row === -1
        ? []
        : [label([Math.max(x, area.left + half - 20), height], words, 'middle', softInk)]),
    ];
  });
}

function stageStrip(area: PlotArea, { verdicts, endS }: RunStudy): readonly Shape[] {
  const [top, bottom] = [area.bottom + 38, area.bottom + 54];
  return verdicts.stages.flatMap(({ stage, fromS, toS }) => {
    const [left] = place(area, fromS, area.y.low);
    const [right] = place(area, toS ?? endS, area.y.low);
    if (right - left < 0.3) return [];
    const { colour, texture } = stagePaint[stage];
    const words = stageLabels[stage];
    const fits = wordsWidthPt(words, smallPt) < right - left - 6;
    const middle = (left + right) / 2;
    // Words that do not fit go below, where the neighbours' words are not.
    const wordsBelow = label(
      [Math.min(Math.max(middle, area.left + 45), area.right - 45), bottom + 11],
      words,
      'middle',
    );
    const plate = wordsWidthPt(words, smallPt) / 2 + 2;
    return [
      ...texturedBox(left, top, right, bottom, colour, texture),
      ...(fits
        ? [
            box(middle - plate, top + 2.5, middle + plate, bottom - 2.5, '#ffffff'),
            label([middle, bottom - 5], words, 'middle'),
          ]
        : [wordsBelow]),
    ];
  });
}

function altText({ name, verdicts, plateau, endS }: RunStudy, detail: FigureDetail): string {
  const minutes = Math.round(endS / 60);
  const held =
    plateau === null || !detail.plateauBand
      ? ''
      : ` The head held at ${plateau.mean.value.toFixed(1)} °C for ${Math.round((plateau.statistics.span.toS - plateau.statistics.span.fromS) / 60)} min.`;
  const stages = detail.stages
    ? ` Stages: ${verdicts.stages.map(({ stage, fromS }) => `${stageLabels[stage]} from ${Math.round(fromS / 60)} min`).join(', ')}.`
    : '';
  return `Head temperature of “${name}” over ${minutes} min.${held}${stages}`;
}
