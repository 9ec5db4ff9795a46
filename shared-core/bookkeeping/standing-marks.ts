import type { Mark, RunInput } from '../run/index.ts';

/** The marks that stand: made, and not withdrawn later. */
export function standingMarks(inputs: readonly RunInput[]): readonly Mark[] {
  const marks = inputs.filter((input) => input.kind === 'mark');
  const withdrawn = new Set(
    marks.flatMap(({ mark }) => (mark.type === 'mark-withdrawn' ? [mark.withdrawnMarkId] : [])),
  );
  return marks.filter(
    ({ markId, mark }) => mark.type !== 'mark-withdrawn' && !withdrawn.has(markId),
  );
}
