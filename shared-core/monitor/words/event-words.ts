import type { RunEventName } from '../../snapshot/index.ts';
import { worded } from '../../wording/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { firstFractionWords } from './first-fraction-words.ts';
import { celsius } from './numbers.ts';
import { against } from './stage-words.ts';

/** Why an event was logged, with the numbers of that second. */
export function eventBecause(event: RunEventName, facts: MonitorFacts): string {
  const { head, firstFraction, scale } = facts;
  const at = head === null ? worded('an unknown temperature') : celsius(head.bulbC);
  switch (event) {
    case 'vapour-arrived':
      return worded(
        'The bulb rose steeply to {at}; vapour at {pressure} kPa is at least {azeotrope}.',
        { at, pressure: scale.pressureKPa.toFixed(1), azeotrope: celsius(scale.azeotropeC) },
      );
    case 'first-fraction-ended':
      return worded(
        '{firstFraction} are set apart{estimated}: a convention, since light volatiles are too little to be seen by temperature.',
        {
          firstFraction: firstFractionWords(firstFraction),
          estimated: firstFraction.estimated ? worded(' (estimated)') : '',
        },
      );
    case 'plateau-ending':
      return plateauEndingBecause(facts, at);
    case 'vapour-receded':
      return worded(
        'The head fell to {at}, as it does only when no vapour reaches the bulb: the heat was taken away, or a draught cools the column.',
        { at },
      );
    case 'vapour-returned':
      return worded('The head is back at {at}.', { at });
  }
}

/** Neither slope nor the test's own figure is told: the one is mostly noise after a few blocks, the other means nothing at a bench. */
function plateauEndingBecause({ head, situation, outlook }: MonitorFacts, at: string): string {
  const { levelC } = situation;
  const stands =
    head === null || levelC === null
      ? ''
      : worded(', {against} the {level} it held', {
          against: against(head.vapourC, levelC),
          level: celsius(levelC),
        });
  return worded(
    'The head is at {at}{stands}: it climbs more than noise explains. The limit is {limitOnProbe} on this probe.',
    { at, stands, limitOnProbe: celsius(outlook.limitOnProbeC) },
  );
}
