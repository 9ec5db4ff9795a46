import type { PrepareDraft } from '../stores/index.ts';

export type AssumedInDraft = PrepareDraft['assumed'][number];

/** The entry that states it. */
const fields: Readonly<Record<AssumedInDraft, keyof PrepareDraft>> = {
  volume: 'chargeVolumeMl',
  strength: 'chargeStrengthAbv',
  'probe-kind': 'probeKind',
};

/**
 * Standard uncertainties of a charge that nobody stated [mL, % vol]: before a class mostly 200 to 500 mL of 6 to 12 % vol are
 * distilled (common practice, no source), a rectangular distribution, u = a/√3 (JCGM 100:2008, 4.3.7).
 */
export const assumedChargeDoubt = {
  volumeMl: Math.round(150 / Math.sqrt(3)),
  strengthAbv: Math.round((10 * 3) / Math.sqrt(3)) / 10,
} as const;

/** What is still assumed once somebody has written or chosen this entry. */
export function assumedAfter(
  field: keyof PrepareDraft,
  { assumed }: Pick<PrepareDraft, 'assumed'>,
): PrepareDraft['assumed'] {
  return assumed.filter((part) => fields[part] !== field);
}

/** What of the charge is only assumed. */
export function assumedOfCharge({
  assumed,
}: Pick<PrepareDraft, 'assumed'>): readonly ('volume' | 'strength')[] {
  return assumed.filter((part) => part !== 'probe-kind');
}

/** What is still assumed once the whole charge was stated. */
export function assumedBesideCharge({
  assumed,
}: Pick<PrepareDraft, 'assumed'>): PrepareDraft['assumed'] {
  return assumed.filter((part) => part === 'probe-kind');
}
