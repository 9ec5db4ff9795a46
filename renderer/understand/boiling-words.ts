import {
  azeotrope,
  bubblePoint,
  type StillMoment,
  say,
  strengthFromMoleFraction,
} from '#shared-core';
import type { useWords } from '../words/index.ts';

type Words = ReturnType<typeof useWords>;

/** What a class sees in the T–x–y diagram at this moment, in one or two sentences. */
export function boilingSentence(moment: StillMoment, words: Words): string {
  const { pot, vapour, headC, pressureKPa } = moment;
  if (pot === null) {
    const start = vapour ? `${headSentence(moment, words)} ` : '';
    return say(
      '{start}What the pot holds by now is not known: book a volume, or put a probe in the pot.',
      { start },
    );
  }
  const strength = words.range(pot.strengthAbv, 0, '% vol');
  const boils = words.quantity(pot.boilsAtC.value, 1, '°C');
  if (vapour === null || headC === null) {
    const noStrength = isInVapour(moment)
      ? say('The head temperature tells no strength of its vapour at this moment')
      : say('No vapour bathes the bulb fully');
    const over = bubblePoint({ ethanolMoleFraction: pot.ethanolMoleFraction.value, pressureKPa });
    const overAbv = words.number(strengthFromMoleFraction(over.vapourEthanolMoleFraction), 0);
    return pot.isBoiling
      ? say(
          '{noStrength}; the pot, at {strength}, boils near {boils}, and the vapour straight above it is about {overAbv} % vol.',
          { noStrength, strength, boils, overAbv },
        )
      : say(
          '{noStrength}; the pot, at {strength}, would boil near {boils}, and the vapour straight above it is about {overAbv} % vol.',
          { noStrength, strength, boils, overAbv },
        );
  }
  const lift = say(
    'The pot, at {strength}, boils near {boils}; the vapour at the head condenses at {head} to {vapour}: the column has lifted it that far.',
    {
      strength,
      boils,
      head: words.quantity(headC.value, 1, '°C'),
      vapour: words.range(vapour.strengthAbv, 0, '% vol'),
    },
  );
  return isAtAzeotrope(moment)
    ? say(
        '{lift} It cannot be told from the azeotrope, the lowest point of the curves, which no column passes.',
        { lift },
      )
    : lift;
}

/** Whether vapour has come and not gone for good: then a strength that is not known may be one of vapour. */
function isInVapour({ stage }: StillMoment): boolean {
  return stage !== 'warm-up' && stage !== 'cool-down';
}

function headSentence({ headC, vapour }: StillMoment, words: Words): string {
  if (headC === null || vapour === null) return '';
  return say('The vapour at the head condenses at {head} to {strength}.', {
    head: words.quantity(headC.value, 1, '°C'),
    strength: words.range(vapour.strengthAbv, 0, '% vol'),
  });
}

/** True when the head's interval reaches the azeotrope. */
export function isAtAzeotrope({ vapour, pressureKPa }: StillMoment): boolean {
  if (vapour === null) return false;
  return vapour.ethanolMoleFraction.high >= azeotrope(pressureKPa).ethanolMoleFraction - 0.005;
}

/** Where the pot's numbers come from. */
export const potBasisWords = {
  'pot-probe': say('from the probe in the pot'),
  balance: say('from what has come over'),
  'as-charged': say('as charged'),
} as const;
