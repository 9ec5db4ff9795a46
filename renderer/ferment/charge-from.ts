import type { RunSettings } from '#shared-core';
import { assumedBesideCharge } from '../draft/index.ts';
import type { PrepareDraft } from '../stores/index.ts';
import { type Decimal, numberWords } from '../words/index.ts';

/** Prepare's form, charged with a ferment: what was known of another charge's volume and strength does not hold for it. */
export function chargeFrom(
  origin: NonNullable<RunSettings['ferment']>,
  volumeMl: number,
  before: Pick<PrepareDraft, 'assumed'>,
  decimal: Decimal,
): Pick<
  PrepareDraft,
  | 'name'
  | 'chargeVolumeMl'
  | 'chargeStrengthAbv'
  | 'assumed'
  | 'chargeDoubtMl'
  | 'chargeDoubtAbv'
  | 'ferment'
> {
  return {
    name: origin.name,
    chargeVolumeMl: numberWords(volumeMl, 0, decimal),
    chargeStrengthAbv: numberWords(origin.strengthAbv.value, 1, decimal),
    assumed: assumedBesideCharge(before),
    chargeDoubtMl: '',
    chargeDoubtAbv: '',
    ferment: origin,
  };
}
