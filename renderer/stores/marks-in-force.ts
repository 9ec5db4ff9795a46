import type { Mark } from '#shared-core';

/** The marks that still count: withdrawn ones and the withdrawals themselves left out. */
export function marksInForce(marks: readonly Mark[]): readonly Mark[] {
  const withdrawn = new Set(
    marks.flatMap(({ mark }) => (mark.type === 'mark-withdrawn' ? [mark.withdrawnMarkId] : [])),
  );
  return marks.filter(
    ({ mark, markId }) => mark.type !== 'mark-withdrawn' && !withdrawn.has(markId),
  );
}

const answers = new Set(['alarm-acknowledged', 'alarm-shelved', 'attention-answered']);

/** Marks of the bench, without the answers to prompts. */
export function benchMarks(marks: readonly Mark[]): readonly Mark[] {
  return marksInForce(marks).filter(({ mark }) => !answers.has(mark.type));
}
