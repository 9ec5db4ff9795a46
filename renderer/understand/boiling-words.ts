import type { StillMoment } from '#shared-core';
import { azeotrope, bubblePoint, strengthFromMoleFraction } from '#shared-core';
import type { useWords } from '../words/index.ts';

type Words = ReturnType<typeof useWords>;

/** What a class sees in the T–x–y diagram at this moment, in one or two sentences. */
export function boilingSentence(moment: StillMoment, words: Words): string {
  const { pot, vapour, headC, pressureKPa } = moment;
  if (pot === null) {
    const start = vapour ? `${headSentence(moment, words)} ` : '';
    return `${start}What the pot holds by now is not known: book a volume, or put a probe in the pot.`;
  }
  const potWords = `the pot, at ${words.range(pot.strengthAbv, 0, '% vol')},`;
  const boilsWords = `near ${words.quantity(pot.boilsAtC.value, 1, '°C')}`;
  if (vapour === null || headC === null) {
    const over = bubblePoint({ ethanolMoleFraction: pot.ethanolMoleFraction.value, pressureKPa });
    const overAbv = strengthFromMoleFraction(over.vapourEthanolMoleFraction);
    const verb = pot.isBoiling ? 'boils' : 'would boil';
    return `No vapour bathes the bulb fully; ${potWords} ${verb} ${boilsWords}, and the vapour straight above it is about ${words.number(overAbv, 0)} % vol.`;
  }
  const lift = `${capital(potWords)} boils ${boilsWords}; the vapour at the head condenses at ${words.quantity(headC.value, 1, '°C')} to ${words.range(vapour.strengthAbv, 0, '% vol')}: the column has lifted it that far.`;
  return isAtAzeotrope(moment)
    ? `${lift} It cannot be told from the azeotrope, the lowest point of the curves, which no column passes.`
    : lift;
}

function headSentence({ headC, vapour }: StillMoment, words: Words): string {
  if (headC === null || vapour === null) return '';
  return `The vapour at the head condenses at ${words.quantity(headC.value, 1, '°C')} to ${words.range(vapour.strengthAbv, 0, '% vol')}.`;
}

/** True when the head's interval reaches the azeotrope. */
export function isAtAzeotrope({ vapour, pressureKPa }: StillMoment): boolean {
  if (vapour === null) return false;
  return vapour.ethanolMoleFraction.high >= azeotrope(pressureKPa).ethanolMoleFraction - 0.005;
}

/** Where the pot's numbers come from. */
export const potBasisWords = {
  'pot-probe': 'from the probe in the pot',
  balance: 'from what has come over',
  'as-charged': 'as charged',
} as const;

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
