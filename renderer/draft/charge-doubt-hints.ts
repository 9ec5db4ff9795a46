import { chargeDoubtMl, defaultRunSettings, say } from '#shared-core';
import { numberFrom, type useWords } from '../words/index.ts';
import { assumedChargeDoubt } from './assumed-parts.ts';

/** What is taken for the standard uncertainties of a charge while nobody states one, for its volume as typed or assumed; of its strength [% vol]. */
export function chargeDoubtHints(
  volumeMl: string,
  words: Pick<ReturnType<typeof useWords>, 'quantity'>,
  strengthDoubtAbv: number = defaultRunSettings.charge.standardUncertaintyAbv,
  isVolumeAssumed = false,
): { readonly volume: string; readonly strength: string } {
  const usual = (quantity: string) =>
    say('Standard uncertainty (k = 1); empty: {usual}.', { usual: quantity });
  const volumeDoubtMl = isVolumeAssumed
    ? assumedChargeDoubt.volumeMl
    : chargeDoubtMl({ volumeMl: numberFrom(volumeMl) ?? 0 });
  return {
    volume: usual(words.quantity(volumeDoubtMl, 1, 'mL')),
    strength: usual(words.quantity(strengthDoubtAbv, 1, '% vol')),
  };
}
