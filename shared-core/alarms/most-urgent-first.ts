import type { Alarm } from '../snapshot/index.ts';

/** Most urgent first: what asks for the heat to be taken off before everything else. The sentence and the prompts both keep to it. */
export const mostUrgentFirst: readonly Alarm[] = [
  'near-dryness',
  'condenser-warm',
  'plateau-departure',
  'over-limit',
  'probe-fault',
  'surging',
  'attention',
];
