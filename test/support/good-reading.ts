import type { RunInput } from '#shared-core';

type ReadingInput = Extract<RunInput, { readonly kind: 'reading' }>;

/** A reading without a fault: of the head in °C, unless a test wants it otherwise. */
export const goodReading = (
  timeS: number,
  value: number,
  other: Partial<ReadingInput> = {},
): RunInput => ({
  kind: 'reading',
  timeS,
  channel: 'head',
  value,
  unit: '°C',
  quality: 'good',
  ...other,
});
