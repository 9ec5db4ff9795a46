/**
 * A number and what it counts, in the form that goes with it: the rule of English, `one ↔ singular`. For pages that are given out in
 * English; what the window says has its plural in the sentence.
 *
 * @param count any number, or one as it was typed
 *
 * Source: common practice, no source.
 * @example
 * counted(1, 'mark') // => "1 mark"
 * counted('1.5', 'plate') // => "1.5 plates"
 */
export function counted(count: number | string, what: string): string {
  return `${count} ${what}${Number(count) === 1 ? '' : 's'}`;
}
