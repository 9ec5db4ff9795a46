import type { Drawing } from '#shared-core';
import {
  type CurvePoint,
  clockAfter,
  groupBy,
  numbersIn,
  type PrintedQuestion,
  readCurve,
} from './printed-sheet.ts';
import { solveBalance, solvePlates, solveRayleigh } from './solve-column.ts';

/** Means over this time: what an eye sees of a curve [s]. */
const eyeS = 20;

/** The numbers that a question asks for, in its order; none where it wants words alone. */
export function solveQuestion(
  question: PrintedQuestion,
  curve: Drawing | null,
  enlarged: Drawing | null,
): readonly number[] {
  const { title, text } = question;
  switch (title) {
    case 'Read the plateau':
      return readPlateau(text, need(question.figure));
    case 'What happened when?':
      return moments(text, need(curve), enlarged);
    case 'A different boiling point':
      return boilingPoint(text);
    case 'How much of the ethanol came over?':
      return recovery(text);
    case 'What would you do better?':
      return lateness(text, need(enlarged));
    case 'Where would you cut?':
      return [passesMl(text, need(question.figure))];
    case 'Why not 100 %?':
      return [];
    case 'Correct the plateau for pressure':
      return clausiusClapeyron(text);
    case 'How well does a thermometer know the strength?':
      return sensitivity(text);
    case 'Balance the ethanol, with its uncertainty':
      return solveBalance(text);
    case 'Count the plates twice':
    case 'Count the plates':
      return solvePlates(text, need(question.figure));
    case 'Does Rayleigh’s equation describe this still?':
    case 'What would a still without a column have given?':
      return solveRayleigh(text);
    case 'From sugar to product':
      return yields(text);
    default:
      throw new Error(`Nobody has learned to answer “${title}”.`);
  }
}

function need(drawing: Drawing | null): Drawing {
  if (drawing === null) throw new Error('The sheet has no curve to read.');
  return drawing;
}

function seen(line: readonly CurvePoint[]): readonly CurvePoint[] {
  const slices = [...groupBy(line, ({ x }) => Math.floor(x / eyeS)).values()];
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  return slices.map((slice) => ({
    x: mean(slice.map(({ x }) => x)),
    y: mean(slice.map(({ y }) => y)),
  }));
}

function readPlateau(text: string, figure: Drawing): readonly number[] {
  const [limitC = 0] = numbersIn(text, /at or below ([\d.]+) °C/);
  const offS = clockAfter(text, 'taken off at') ?? Number.POSITIVE_INFINITY;
  let best: readonly CurvePoint[] = [];
  const lengthS = (part: readonly CurvePoint[]) => (part.at(-1)?.x ?? 0) - (part[0]?.x ?? 0);
  for (const line of readCurve(figure)) {
    const points = seen(line).filter(({ x }) => x <= offS);
    for (let from = 0; from < points.length; from++) {
      let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      for (let to = from; to < points.length; to++) {
        const { y } = points[to]!;
        [low, high] = [Math.min(low, y), Math.max(high, y)];
        if (high > limitC || high - low > 1) break;
        const part = points.slice(from, to + 1);
        if (lengthS(part) > lengthS(best)) best = part;
      }
    }
  }
  const meanC = best.reduce((sum, { y }) => sum + y, 0) / best.length;
  return [meanC, lengthS(best) / 60];
}

function crossesUpS(points: readonly CurvePoint[], atC: number, untilS: number): number {
  return points.findLast(({ x, y }) => x <= untilS && y <= atC)?.x ?? Number.NaN;
}

function moments(text: string, curve: Drawing, enlarged: Drawing | null): readonly number[] {
  const points = readCurve(curve).flatMap(seen);
  const hot = points.find(
    ({ x, y }) =>
      y >= 60 && points.every((later) => later.x < x || later.x > x + 120 || later.y >= 60),
  );
  const found = [(hot?.x ?? Number.NaN) / 60];
  if (!text.includes('B:')) return found;
  const [limitC = 0] = numbersIn(text, /rises past ([\d.]+) °C for good, while/);
  return [...found, passesLimitS(text, need(enlarged), limitC) / 60];
}

function passesLimitS(text: string, enlarged: Drawing, limitC: number): number {
  const points = readCurve(enlarged).flatMap(seen);
  const offS = clockAfter(text, 'taken off at');
  if (offS !== null) return crossesUpS(points, limitC, offS);
  // Without heat-off the curve may come down through the limit while it cools.
  const up = points.findLastIndex(
    ({ y }, index) => y > limitC && (points[index - 1]?.y ?? 99) <= limitC,
  );
  return points[up]?.x ?? Number.NaN;
}

function passesMl(text: string, figure: Drawing): number {
  const [limitC = 0] = numbersIn(text, /pass(?:es)? ([\d.]+) °C for the last time/);
  const points = readCurve(figure).flat();
  const at = points.findLastIndex(
    ({ y }, index) => y > limitC !== (points[index - 1]?.y ?? y) > limitC,
  );
  return points[at]?.x ?? Number.NaN;
}

function lateness(text: string, enlarged: Drawing): readonly number[] {
  const [limitC = 0] = numbersIn(text, /at or below ([\d.]+) °C/);
  const offS = clockAfter(text, 'taken off at') ?? Number.NaN;
  const points = readCurve(enlarged).flatMap(seen);
  const passedS = crossesUpS(points, limitC, offS);
  const lastC = points.findLast(({ x }) => x <= offS)?.y ?? 0;
  const lastS = points.findLast(({ x }) => x <= offS)?.x ?? 0;
  // Beyond the enlarged part the head is far above the limit.
  const isPast = lastC > limitC || offS - lastS > 60;
  return [isPast ? (offS - passedS) / 60 : 0];
}

function boilingPoint(text: string): readonly number[] {
  const [bookC = 0, perKPa = 0] = numbersIn(text, /boils at ([\d.]+) °C.*rule: ([\d.]+) °C/s);
  const [hereKPa = 0, bookKPa = 0] = numbersIn(
    text,
    /still: ([\d.]+) kPa\. The table means ([\d.]+)/,
  );
  return [bookC - perKPa * (bookKPa - hereKPa)];
}

function recovery(text: string): readonly number[] {
  const [volumeMl = 0, abv = 0] = numbersIn(text, /flask: ([\d.]+) mL of ([\d.]+) % vol/);
  const chargedMl = (volumeMl * abv) / 100;
  const receivers = [...text.matchAll(/Receiver \d+: ([\d.]+) mL of ([\d.]+) % vol/g)];
  const collectedMl = receivers.reduce(
    (sum, [, ml, strength]) => sum + (Number(ml) * Number(strength)) / 100,
    0,
  );
  return [chargedMl, (100 * collectedMl) / chargedMl];
}

function clausiusClapeyron(text: string): readonly number[] {
  const [meanC = 0, pressureKPa = 0] = numbersIn(
    text,
    /Plateau: \(([\d.]+)[^)]*\)\s°C \(k = 2\) at ([\d.]+) kPa/,
  );
  const [heat = 1] = numbersIn(text, /vapour pressure: ([\d.]+) kJ\/mol/);
  const temperatureK = meanC + 273.15;
  return [meanC + ((8.314e-3 * temperatureK ** 2) / heat) * Math.log(101.325 / pressureKPa)];
}

function sensitivity(text: string): readonly number[] {
  const [probeK = 0] = numbersIn(text, /uncertainty is ([\d.]+) K/);
  const pairs = [...text.matchAll(/([\d.]+) % vol at ([\d.]+) °C/g)].map(([, abv, atC]) => ({
    abv: Number(abv),
    atC: Number(atC),
  }));
  const doubt = (from: number) => {
    const [a, b] = [pairs[from]!, pairs[from + 1]!];
    return (probeK * (a.abv - b.abv)) / (b.atC - a.atC);
  };
  return [doubt(0), doubt(2)];
}

function yields(text: string): readonly number[] {
  const [sugarG = 1, perG = 1] = numbersIn(text, /hexose\): ([\d.]+) g.*= ([\d.]+) g\/g/);
  const [chargedG = 1, cutsG = 0] = numbersIn(
    text,
    /charge: ([\d.]+) g; in all receivers: ([\d.]+) g/,
  );
  const possibleG = sugarG * perG;
  return [(100 * chargedG) / possibleG, (100 * cutsG) / chargedG, (100 * cutsG) / possibleG];
}
