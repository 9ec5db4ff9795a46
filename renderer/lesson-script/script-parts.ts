/** What is written down for each stage, in the order of use. */
export const scriptParts = [
  { part: 'show', name: 'Show' },
  { part: 'ask', name: 'Ask' },
  { part: 'predict', name: 'Predict' },
] as const;
