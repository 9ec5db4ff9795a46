import { worded } from '../wording/index.ts';

/** A figure made from what was collected: at least so much, where a cut was not measured. */
export function leastWords(figure: string, isWhole: boolean): string {
  return isWhole ? figure : worded('{figure} or more', { figure });
}
