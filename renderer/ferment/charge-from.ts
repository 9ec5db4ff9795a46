import type { RunSettings } from '#shared-core';
import type { PrepareDraft } from '../stores/index.ts';
import { type Decimal, numberWords } from '../words/index.ts';

/** Prepare's form, charged with a ferment. */
export function chargeFrom(
  origin: NonNullable<RunSettings['ferment']>,
  volumeMl: number,
  decimal: Decimal,
): Pick<PrepareDraft, 'name' | 'chargeVolumeMl' | 'chargeStrengthAbv' | 'ferment'> {
  return {
    name: origin.name,
    chargeVolumeMl: numberWords(volumeMl, 0, decimal),
    chargeStrengthAbv: numberWords(origin.strengthAbv.value, 1, decimal),
    ferment: origin,
  };
}
