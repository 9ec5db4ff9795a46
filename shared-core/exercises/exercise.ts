import type { Drawing } from '../figures/index.ts';
import { numberWords } from '../wording/index.ts';

export const exerciseLevels = ['school', 'undergraduate'] as const;
export type ExerciseLevel = (typeof exerciseLevels)[number];

/** One number that is asked for, and how far off still counts as right. */
export interface AnswerQuantity {
  /** What it is, e.g. `recovery`. */
  readonly of: string;
  readonly value: number;
  readonly tolerance: number;
  readonly unit: string;
}

/** The answer that follows from what is printed on the sheet. */
export interface ExerciseAnswer {
  readonly words: string;
  /** None where the answer is words alone. */
  readonly quantities: readonly AnswerQuantity[];
}

/** A question about one run, with its worked answer. */
export interface Exercise {
  /** Stable, e.g. `school-recovery`. */
  readonly id: string;
  readonly level: ExerciseLevel;
  readonly title: string;
  readonly question: string;
  /** Data of the run and tables that the student needs. */
  readonly given: readonly string[];
  readonly marks: number;
  readonly answer: ExerciseAnswer;
  /** The way to it, step by step, with the numbers as printed. */
  readonly working: readonly string[];
  readonly answerLines: number;
  /** To draw on. */
  readonly figure: Drawing | null;
  /** The figure with its solution. */
  readonly solvedFigure: Drawing | null;
}

/** Fills in what most questions leave out. */
export function exercise(
  parts: Omit<Exercise, 'figure' | 'solvedFigure'> &
    Partial<Pick<Exercise, 'figure' | 'solvedFigure'>>,
): Exercise {
  return { figure: null, solvedFigure: null, ...parts };
}

/** A number asked for, as it is written in the key. */
export interface AskedNumber extends AnswerQuantity {
  readonly decimals: number;
}

/** Numbers asked for, each with its limit of acceptance, and what is to be said beside them. */
export function answerOf(asked: readonly AskedNumber[], besides = ''): ExerciseAnswer {
  const limited = asked.map((one) => ({ ...one, tolerance: twoFigures(one.tolerance) }));
  const words = limited.map(({ of, value, tolerance, unit, decimals }) => {
    const name = asked.length === 1 ? '' : `${of} `;
    const accepted = numberWords(tolerance, limitDecimals(tolerance, decimals));
    return `${name}${withUnit(numberWords(value, decimals), unit)} (accept ±${withUnit(accepted, unit)})`;
  });
  return {
    words: words.join('; ') + (besides === '' ? '' : `. ${besides}`),
    quantities: limited.map(({ of, value, tolerance, unit }) => ({ of, value, tolerance, unit })),
  };
}

const twoFigures = (limit: number) => Number(limit.toPrecision(2));

/** As many as the answer has, or more: who marks by the words must draw the line where who marks by the number does. */
function limitDecimals(limit: number, answerDecimals: number): number {
  const own = /\.(\d+)$/.exec(String(limit))?.[1] ?? '';
  return Math.max(answerDecimals, own.length, limit < 1 ? 1 : 0);
}

const withUnit = (number: string, unit: string) =>
  unit === '' ? number : `${number}\u00a0${unit}`;

export function answerInWords(words: string): ExerciseAnswer {
  return { words, quantities: [] };
}

/** A number as it is printed: whoever works with the sheet has no other. */
export function shown(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}
