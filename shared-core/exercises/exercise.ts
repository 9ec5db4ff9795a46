import type { Drawing } from '../figures/index.ts';

export const exerciseLevels = ['school', 'undergraduate'] as const;
export type ExerciseLevel = (typeof exerciseLevels)[number];

/** The answer that the record gives, and how far off still counts as right. */
export interface ExerciseAnswer {
  readonly words: string;
  /** Null where the answer is words alone. */
  readonly value: number | null;
  readonly tolerance: number | null;
  readonly unit: string;
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
  /** The way to it, step by step, with the run's own numbers. */
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

export function answerOf(
  value: number,
  tolerance: number,
  unit: string,
  decimals: number,
): ExerciseAnswer {
  const words = `${value.toFixed(decimals).replace('-', '−')}\u00a0${unit} (accept ±${tolerance.toPrecision(2)}\u00a0${unit})`;
  return { words, value, tolerance, unit };
}

export function answerInWords(words: string): ExerciseAnswer {
  return { words, value: null, tolerance: null, unit: '' };
}
