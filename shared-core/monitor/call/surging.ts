import { kelvin } from '../words/numbers.ts';
import { standingAt } from '../words/stage-words.ts';
import type { AlarmDefinition } from './alarm-definition.ts';
import { mayBoil } from './heating.ts';

export const surging = {
  id: 'surging',
  title: 'Surging',
  act: 'Ease the heat.',
  consequence: 'Liquid thrown up the column spoils the separation.',
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
    because: `The head swings up and down by far more than its noise of ${kelvin(noise.slowSdK)} around ${head === null ? 'unknown' : standingAt(head)}.`,
    wouldChangeIf: 'A minute of steady readings.',
  }),
  sentence: () => 'The column is surging.',
} as const satisfies AlarmDefinition;
