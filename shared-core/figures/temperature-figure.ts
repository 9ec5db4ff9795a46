import { azeotrope, limitTemperatureC } from '../equilibrium/index.ts';
import { type MarkType, standingMarks } from '../run/index.ts';
import { stageLabels } from '../stages/index.ts';
import type { RunStudy } from '../study/index.ts';
import { clockWords } from '../wording/index.ts';
import { type Drawing, ink, type Point, type Shape, softInk } from './drawing.ts';
import { niceTicks, timeTicks } from './nice-ticks.ts';
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
import { runLine } from './run-lines.ts';
import { stagePaint, texturedBox } from './textures.ts';
import { axisTimeWords } from './time-words.ts';

/** What of the tool's judgement a figure shows; a worksheet hides it. */
export interface FigureDetail {
  readonly stages: boolean;
  readonly plateauBand: boolean;
}

export const figureWidthPt = 482;
/** Height of the strip of stages, and of a row of names below it. */
const stripPt = 24;
const rowPt = 10;
const markLetters: Partial<Record<MarkType, string>> = {
  'heat-on': 'heat on',
  'heat-eased': 'eased',
  'heat-off': 'heat off',
  'receiver-changed': 'receiver',
};

/** Head temperature against time, with the band of the main fraction, the marks and the stages below. */
export function temperatureFigure(study: RunStudy, detail: FigureDetail): Drawing {
  const { rows, endS, settings, pressureKPa } = study;
  const temperatures = rows.map(({ headC }) => headC);
  const low = Math.min(20, ...extremes(temperatures, Math.min));
  const high = Math.max(85, ...extremes(temperatures, Math.max)) + 3;
  const ticks = niceTicks(low, high, 10);
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
  const points = rows.map(({ timeS, headC }) => ({ timeS, value: headC }));
  const course = [...marks(area, study), ...runLine(area, points, { colour: ink, widthPt: 1.2 })];
  const strip = detail.stages ? stageStrip(area, study) : { shapes: [], heightPt: 0 };
  return {
    widthPt: figureWidthPt,
    heightPt: 254 + strip.heightPt,
    altText: altText(study, detail),
    shapes: [
      ...(detail.plateauBand ? band(area, pressureKPa, settings.leastStrengthAbv) : []),
      ...frame(area),
      ...importedNote(area, study.imported === true),
      ...course,
      ...(detail.plateauBand
        ? bandWords(area, pressureKPa, settings.leastStrengthAbv, pointsAlong(course))
        : []),
      ...strip.shapes,
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
  ];
}

/** What the band's edges are, each where neither the run's line nor a mark goes through the words. */
function bandWords(
  area: PlotArea,
  pressureKPa: number,
  leastStrengthAbv: number,
  drawn: readonly Point[],
): readonly Shape[] {
  const [, top] = place(area, 0, limitTemperatureC({ leastStrengthAbv, pressureKPa }));
  const [, bottom] = place(area, 0, azeotrope(pressureKPa).temperatureC);
  const words = (text: string, y: number) =>
    label([freePlace(area, text, y, drawn), y], text, 'start', '#0f5a2b');
  return [
    words(`limit: ${leastStrengthAbv} % vol`, top - 3),
    words(`azeotrope at ${pressureKPa.toFixed(1)} kPa`, bottom + 9),
  ];
}

/** Where words on this base line meet nothing that is drawn; at the left where there is no such place. */
function freePlace(area: PlotArea, text: string, y: number, drawn: readonly Point[]): number {
  const width = wordsWidthPt(text, smallPt) + 4;
  const start = area.left + 5;
  for (let x = start; x + width < area.right; x += 12) {
    const isMet = drawn.some(
      ([atX, atY]) => atX > x - 3 && atX < x + width && atY > y - smallPt - 1 && atY < y + 4,
    );
    if (!isMet) return x;
  }
  return start;
}

/** The points of lines, so close that none passes a word unseen. */
function pointsAlong(shapes: readonly Shape[]): readonly Point[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'path') return [];
    return shape.points.flatMap((to, index): Point[] => {
      const from = shape.points[index - 1];
      if (from === undefined) return [to];
      const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / 3));
      return Array.from({ length: steps }, (_, step) => {
        const share = (step + 1) / steps;
        return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
      });
    });
  });
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

function stageStrip(
  area: PlotArea,
  { verdicts, endS }: RunStudy,
): { readonly shapes: readonly Shape[]; readonly heightPt: number } {
  const [top, bottom] = [area.bottom + 38, area.bottom + 54];
  // Words that do not fit go below; where the neighbours' words are in the way, a row further down.
  const rowEnds: number[] = [];
  const shapes = verdicts.stages.flatMap(({ stage, fromS, toS }) => {
    const [left] = place(area, fromS, area.y.low);
    const [right] = place(area, toS ?? endS, area.y.low);
    if (right - left < 0.3) return [];
    const { colour, texture } = stagePaint[stage];
    const words = stageLabels[stage];
    const fits = wordsWidthPt(words, smallPt) < right - left - 6;
    const middle = (left + right) / 2;
    const plate = wordsWidthPt(words, smallPt) / 2 + 2;
    const below = () => {
      const x = Math.min(Math.max(middle, area.left + plate), area.right - plate);
      const free = rowEnds.findIndex((end) => x - plate > end);
      const row = free === -1 ? rowEnds.length : free;
      rowEnds[row] = x + plate + 3;
      return label([x, bottom + 11 + rowPt * row], words, 'middle');
    };
    return [
      ...texturedBox(left, top, right, bottom, colour, texture),
      ...(fits
        ? [
            box(middle - plate, top + 2.5, middle + plate, bottom - 2.5, '#ffffff'),
            label([middle, bottom - 5], words, 'middle'),
          ]
        : [below()]),
    ];
  });
  return { shapes, heightPt: stripPt + rowPt * rowEnds.length };
}

function altText(
  { name, verdicts, plateau, endS, imported }: RunStudy,
  detail: FigureDetail,
): string {
  const minutes = Math.round(endS / 60);
  const held =
    plateau === null || !detail.plateauBand
      ? ''
      : ` The head held at ${plateau.mean.value.toFixed(1)} °C for ${Math.round((plateau.statistics.span.toS - plateau.statistics.span.fromS) / 60)} min.`;
  const stages = detail.stages
    ? ` Stages: ${verdicts.stages.map(({ stage, fromS }) => `${stageLabels[stage]} from ${clockWords(fromS)}`).join(', ')}.`
    : '';
  return `Head temperature of “${name}” over ${minutes} min${imported === true ? ', imported from a file' : ''}.${held}${stages}`;
}
