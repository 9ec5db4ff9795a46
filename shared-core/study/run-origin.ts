import type { RunStudy } from './study-run.ts';

/**
 * Where the readings of a run come from.
 *
 * @param run whether it was taken in from a file, or is a rehearsal with the simulated still
 *
 * Source: this project's words; no formula.
 * @example
 * originOf({ imported: true, rehearsal: false }) // => "imported"
 * originOf({ rehearsal: false }) // => "recorded"
 */
export function originOf({
  imported,
  rehearsal,
}: Pick<RunStudy, 'imported' | 'rehearsal'>): string {
  if (imported === true) return 'imported';
  return rehearsal ? 'rehearsal' : 'recorded';
}
