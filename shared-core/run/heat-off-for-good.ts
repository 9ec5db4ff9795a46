import type { Mark } from './mark.ts';

/**
 * When the heat was taken off for good: where the last mark of the heat is that it is off. A flame that is taken away and put back is not.
 *
 * @param marks those that stand, in time order; a mark that was withdrawn is not among them
 * @returns the time [s]; null where nobody marked it, or the heat was on again after it
 *
 * Source: the marks' own meaning; no standard.
 * @example
 * const mark = (timeS, type) => ({ kind: 'mark', timeS, markId: timeS, mark: { type } });
 * heatOffForGoodS([mark(900, 'heat-off'), mark(930, 'heat-on'), mark(2400, 'heat-off')]) // => 2400
 * heatOffForGoodS([mark(900, 'heat-off'), mark(930, 'heat-on')]) // => null
 */
export function heatOffForGoodS(marks: readonly Mark[]): number | null {
  const last = marks.findLast(({ mark }) => heatMarks.has(mark.type));
  return last?.mark.type === 'heat-off' ? last.timeS : null;
}

const heatMarks: ReadonlySet<Mark['mark']['type']> = new Set(['heat-on', 'heat-eased', 'heat-off']);
