import { cautionOf } from '../../cautions/index.ts';
import { worded } from '../../wording/index.ts';
import { lastsAfterS } from '../patience.ts';
import { span } from '../words/numbers.ts';
import type { AlarmDefinition } from './alarm-definition.ts';

export const attention = {
  id: 'attention',
  title: worded('Nobody answered'),
  act: worded('Go to the still and confirm that you are there.'),
  consequence: cautionOf('attended').because,
  caution: null,
  priority: 'medium',
  onDelayS: 0,
  offDelayS: 0,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: false,
  waitsForHead: false,
  lingers: false,
  condition: ({ facts: { attentionDueS, timeS } }) =>
    attentionDueS !== null && timeS >= attentionDueS + lastsAfterS,
  reason: ({ attentionDueS, timeS }) => ({
    because: worded('The check was due {time} ago and nobody answered.', {
      time: span(timeS - (attentionDueS ?? timeS)),
    }),
    wouldChangeIf: worded('Any mark made by a person.'),
  }),
  sentence: () => worded('Nobody has confirmed being at the still.'),
} as const satisfies AlarmDefinition;
