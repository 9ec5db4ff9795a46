import type { RunEventName } from '../../snapshot/index.ts';
import type { MonitorFacts } from '../monitor-facts.ts';
import { celsius, kelvinPerMinute, span } from './numbers.ts';

/** Why an event was logged, with the numbers of that second. */
export function eventBecause(event: RunEventName, facts: MonitorFacts): string {
  const { head, plateau, firstFraction, outlook, scale } = facts;
  const at = head === null ? 'an unknown temperature' : celsius(head.bulbC);
  switch (event) {
    case 'vapour-arrived':
      return `The bulb rose steeply to ${at}; vapour at ${scale.pressureKPa.toFixed(1)} kPa is at least ${celsius(scale.azeotropeC)}.`;
    case 'first-fraction-ended':
      return `${firstFraction.done.toFixed(1)} of ${firstFraction.wanted} ${firstFraction.unit} are set apart${firstFraction.estimated ? ' (estimated)' : ''}: a convention, since light volatiles are too little to be seen by temperature.`;
    case 'plateau-ending':
      return `The head is leaving ${celsius(plateau.levelC ?? scale.azeotropeC)}: a rise of ${kelvinPerMinute(plateau.evidence.slopeKPerS)} since ${span(facts.timeS - plateau.evidence.onsetS)} ago (log-likelihood ratio ${plateau.evidence.logLikelihoodRatio.toFixed(1)}). The limit is ${celsius(outlook.limitOnProbeC)} on this probe.`;
    case 'vapour-receded':
      return `The head fell to ${at} from ${celsius(plateau.levelC ?? scale.azeotropeC)}: heat removed, or a draught.`;
    case 'vapour-returned':
      return `The head is back at ${at}.`;
  }
}
