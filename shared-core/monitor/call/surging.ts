import { worded } from '../../wording/index.ts';
import { kelvin } from '../words/numbers.ts';
import { standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { mayBoil } from './heating.ts';

export const surging = {
  id: 'surging',
  title: worded('Surging'),
  act: worded('Ease the heat.'),
  consequence: worded('Liquid thrown up the column spoils the separation.'),
  caution: null,
  priority: 'medium',
  onDelayS: 10,
  offDelayS: 60,
  asksForHeatOff: false,
  isAnsweredByHeatOff: false,
  mayBeShelved: true,
  waitsForHead: true,
  lingers: true,
  condition: ({ facts, surging }) => surging && facts.situation.heldS !== null && mayBoil(facts),
  reason: ({ head, noise }) => ({
    because: worded(
      'The head swings up and down by far more than its noise of {noise} around {at}.',
      { noise: kelvin(noise.slowSdK), at: standingAt(head) },
    ),
    wouldChangeIf: worded('A minute of steady readings.'),
  }),
  sentence: () => worded('The column is surging.'),
} as const satisfies AlarmDefinition;
