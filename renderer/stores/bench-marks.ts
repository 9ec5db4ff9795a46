import { type Mark, standingMarks } from '#shared-core';

const answers = new Set(['alarm-acknowledged', 'alarm-shelved', 'attention-answered']);

/** Standing marks of the bench, without the answers to prompts. */
export function benchMarks(marks: readonly Mark[]): readonly Mark[] {
  return standingMarks(marks).filter(({ mark }) => !answers.has(mark.type));
}
