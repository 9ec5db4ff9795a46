import type { Exercise } from './exercise.ts';

/** What one number that is asked for is worth. */
export interface PartMarks {
  readonly of: string;
  readonly marks: number;
}

/**
 * The marks of a question, part by part: shared out evenly over the numbers asked for, and what is left over goes to the first of them, since
 * the later ones follow from those.
 *
 * @param exercise from `exercisesOf`
 * @returns one entry a number asked for, in whole marks that add up to those of the question; none where the answer is words alone
 *
 * Source: common practice, no source.
 * @example
 * const part = (of) => ({ of, value: 1, tolerance: 0.1, unit: 'g' });
 * partMarks({ marks: 5, answer: { words: '', quantities: [part('charged'), part('collected')] } }) // => [{ "of": "charged", "marks": 3 }, { "of": "collected", "marks": 2 }]
 */
export function partMarks({
  marks,
  answer,
}: Pick<Exercise, 'marks' | 'answer'>): readonly PartMarks[] {
  const count = answer.quantities.length;
  return answer.quantities.map(({ of }, index) => ({
    of,
    marks: Math.floor(marks / count) + (index < marks % count ? 1 : 0),
  }));
}
