import { worded } from '../../wording/index.ts';
import { celsius } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { faultKind } from './fault-kinds.ts';

/** Head and pot cannot both be right; which of them is wrong no reading tells, and the head is gone by meanwhile. */
export const probesDisagree = {
  id: 'probes-disagree',
  title: worded('Head and pot disagree'),
  act: worded(
    'See which probe is where, and whether that of the pot is in the liquid; heat off and cold before you touch either.',
  ),
  consequence: worded(
    'Stages and the heat-off call go by the head alone: if it is the head that reads wrong, they are wrong as well.',
  ),
  caution: 'hot-head',
  priority: 'medium',
  onDelayS: 0,
  offDelayS: 5,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: true,
  waitsForHead: false,
  lingers: false,
  condition: ({ facts }) => facts.stage !== 'cool-down' && faultKind(facts) === 'contradicted',
  occurrence: (facts) =>
    faultKind(facts) === 'contradicted' ? { key: 'hotter-than-pot', isRepeat: false } : null,
  reason: ({ head, potC }) => ({
    because:
      head === null || potC === null
        ? worded('The head reads hotter than the pot that feeds it.')
        : worded(
            'The head reads {head}, the pot that feeds it {pot}: one of the two cannot be right.',
            { head: celsius(head.bulbC), pot: celsius(potC) },
          ),
    wouldChangeIf: worded('A pot that reads hotter than the head.'),
  }),
  sentence: () =>
    worded('The head reads hotter than the pot that feeds it: one of the two is wrong.'),
  // It may last for the whole run, as that of a probe that hangs in the air: who has answered it hears of the run again.
  speaks: (_, state) => state !== 'acknowledged',
} as const satisfies AlarmDefinition;
