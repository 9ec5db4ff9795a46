import type { Mark } from './mark.ts';
import type { RunInput } from './run-input.ts';

/**
 * The marks that stand: made, and not withdrawn later.
 *
 * @param inputs in order of time [s]; any others than marks are passed over
 *
 * Source: the rule of this project's run log: the record keeps both marks.
 * @example
 * const mark = (timeS, markId, mark) => ({ kind: 'mark', timeS, markId, mark });
 * standingMarks([mark(1, 1, { type: 'heat-on' }), mark(2, 2, { type: 'mark-withdrawn', withdrawnMarkId: 1 })]) // => []
 */
export function standingMarks(inputs: readonly RunInput[]): readonly Mark[] {
  const marks = inputs.filter((input) => input.kind === 'mark');
  const withdrawn = new Set(
    marks.flatMap(({ mark }) => (mark.type === 'mark-withdrawn' ? [mark.withdrawnMarkId] : [])),
  );
  return marks.filter(
    ({ markId, mark }) => mark.type !== 'mark-withdrawn' && !withdrawn.has(markId),
  );
}
