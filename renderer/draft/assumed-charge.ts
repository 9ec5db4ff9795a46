import type { RunSettings } from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';

export type AssumedOfCharge = NonNullable<RunSettings['charge']['assumed']>[number];

const partOfField: Partial<Record<keyof PrepareDraft, AssumedOfCharge>> = {
  chargeVolumeMl: 'volume',
  chargeStrengthAbv: 'strength',
};

/**
 * Standard uncertainties of a charge that nobody stated [mL, % vol]: before a class mostly 200 to 500 mL of 6 to 12 % vol are
 * distilled (common practice, no source), a rectangular distribution, u = a/√3 (JCGM 100:2008, 4.3.7).
 */
export const assumedChargeDoubt = {
  volumeMl: Math.round(150 / Math.sqrt(3)),
  strengthAbv: Math.round((10 * 3) / Math.sqrt(3)) / 10,
} as const;

/** What is still assumed of the charge once somebody has written this entry. */
export function assumedAfter(
  field: keyof PrepareDraft,
  { assumedCharge }: Pick<PrepareDraft, 'assumedCharge'>,
): PrepareDraft['assumedCharge'] {
  return assumedCharge.filter((part) => part !== partOfField[field]);
}
