import type { KeptFerment } from '../ferment-log/index.ts';
import type { FermentVerdict } from './ferment-log.ts';
import { standingEntries } from './readings-of-ferment.ts';

export const distillingConditions = ['ended', 'degassed', 'settled', 'strained'] as const;
export type DistillingCondition = (typeof distillingConditions)[number];

/** Whether a ferment is ready for the still. It is advice: whoever distils decides. */
export interface DistillingAdvice {
  readonly isGo: boolean;
  readonly unmet: readonly DistillingCondition[];
  /** The smallest pot for all of it [mL]. */
  readonly leastPotMl: number;
}

/** Share of the pot that may be filled. Source: the caution "at most half full"; common practice, no source. */
const mostOfPot = 0.5;

/**
 * Whether a ferment is ready for the still: judged finished, and degassed, settled and strained by its log. Each of the three must
 * have been entered; nothing else tells it: `go = ended ∧ degassed ∧ settled ∧ strained`; and the pot that
 * it fills by half.
 *
 * @param kept a ferment with its entries
 * @param verdict what it was judged to be
 *
 * Source: common practice, no source.
 * @example
 * distillingAdvice({ stated: { beganAtIso: '2026-05-01T08:00:00Z', volumeMl: 900 }, entries: [] }, { state: 'finished' }).unmet // => ["degassed", "settled", "strained"]
 */
export function distillingAdvice(
  kept: Pick<KeptFerment, 'entries'> & {
    readonly stated: Pick<KeptFerment['stated'], 'beganAtIso' | 'volumeMl'>;
  },
  { state }: Pick<FermentVerdict, 'state'>,
): DistillingAdvice {
  const done = new Set<string>(standingEntries(kept).flatMap(({ entry }) => entry.read.treatments));
  const unmet = distillingConditions.filter((condition) =>
    condition === 'ended' ? state !== 'finished' : !done.has(condition),
  );
  const leastPotMl = kept.stated.volumeMl / mostOfPot;
  return { isGo: unmet.length === 0, unmet, leastPotMl };
}
