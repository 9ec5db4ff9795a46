import { platesWords, type RunSettings } from '../run/index.ts';

/** A still without a column, one with a column, or one of which nobody said what it is. */
export type ColumnKind = 'simple' | 'fractional' | 'not described';

/**
 * What kind of distillation a run was, by the plates set for its column; the pot, one more equilibrium stage, is not
 * among them.
 *
 * @param settings plates [1], 0 … 40 (0: no column), or null when not known
 *
 * Source: W. L. McCabe, E. W. Thiele, Ind. Eng. Chem. 17 (1925) 605 (the still counts as one equilibrium stage).
 * @example
 * runKind({ rig: { ...defaultRunSettings.rig, plates: 0 } }) // => "simple"
 * runKind({ rig: { ...defaultRunSettings.rig, plates: 1 } }) // => "fractional"
 * runKind({ rig: { ...defaultRunSettings.rig, plates: 6 } }) // => "fractional"
 * runKind(defaultRunSettings) // => "not described"
 */
export function runKind({ rig }: Pick<RunSettings, 'rig'>): ColumnKind {
  if (rig.plates === null) return 'not described';
  return rig.plates === 0 ? 'simple' : 'fractional';
}

/** The kind of a run with its column: `simple, no column`, `fractional, 6 plates`. */
export function kindWords(settings: Pick<RunSettings, 'rig'>): string {
  const kind = runKind(settings);
  return kind === 'not described' ? kind : `${kind}, ${platesWords(settings.rig.plates)}`;
}
