import { type Mark, type RunInput, standingMarks } from '../run/index.ts';

/** The marks among a run's inputs that stand, in order of time. */
export function marksAmong(inputs: Iterable<RunInput>): readonly Mark[] {
  const marks: Mark[] = [];
  for (const input of inputs) if (input.kind === 'mark') marks.push(input);
  return standingMarks(marks);
}
