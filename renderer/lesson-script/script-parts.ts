import { say } from '#shared-core';

/** What is written down for each stage, in the order of use. */
export const scriptParts = [
  { part: 'show', name: say('Show') },
  { part: 'ask', name: say('Ask') },
  { part: 'predict', name: say('Predict') },
] as const;
