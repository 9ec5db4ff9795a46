import { worded } from '../wording/index.ts';

/**
 * The column of a rig in words, by its theoretical plates, the pot not counted.
 *
 * @param plates [1], 0 … 40; null when not known
 *
 * Source: this project's words; no formula.
 * @example
 * platesWords(0) // => "no column"
 * platesWords(2.5) // => "2.5 plates"
 */
export function platesWords(plates: number | null): string {
  if (plates === null) return worded('plates not known');
  if (plates === 0) return worded('no column');
  return plates === 1 ? worded('1 plate') : worded('{count} plates', { count: plates });
}
