import type { RunEventName } from '../../snapshot/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { firstFractionWords } from './first-fraction-words.ts';
import { celsius } from './numbers.ts';
import { against } from './stage-words.ts';

/** Why an event was logged, with the numbers of that second. */
export function eventBecause(event: RunEventName, facts: MonitorFacts): string {
  const { head, firstFraction, scale } = facts;
  const at = head === null ? 'an unknown temperature' : celsius(head.bulbC);
  switch (event) {
    case 'vapour-arrived':
      return `The bulb rose steeply to ${at}; vapour at ${scale.pressureKPa.toFixed(1)} kPa is at least ${celsius(scale.azeotropeC)}.`;
    case 'first-fraction-ended':
      return `${firstFractionWords(firstFraction)} are set apart${firstFraction.estimated ? ' (estimated)' : ''}: a convention, since light volatiles are too little to be seen by temperature.`;
    case 'plateau-ending':
      return plateauEndingBecause(facts, at);
    case 'vapour-receded':
      return `The head fell to ${at}, as it does only when no vapour reaches the bulb: the heat was taken away, or a draught cools the column.`;
    case 'vapour-returned':
      return `The head is back at ${at}.`;
  }
}

/** Neither slope nor the test's own figure is told: the one is mostly noise after a few blocks, the other means nothing at a bench. */
function plateauEndingBecause({ head, situation, outlook }: MonitorFacts, at: string): string {
  const { levelC } = situation;
  const stands =
    head === null || levelC === null
      ? ''
      : `, ${against(head.vapourC, levelC)} the ${celsius(levelC)} it held`;
  return `The head is at ${at}${stands}: it climbs more than noise explains. The limit is ${celsius(outlook.limitOnProbeC)} on this probe.`;
}
