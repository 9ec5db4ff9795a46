import { z } from 'zod';
import { linkChangeSchema } from './link-change.ts';
import { markSchema } from './mark.ts';
import { readingSchema } from './reading.ts';

/** Everything the monitor may see of a run, in time order. Replay feeds the same inputs again. */
export const runInputSchema = z.discriminatedUnion('kind', [
  readingSchema,
  markSchema,
  linkChangeSchema,
]);

export type RunInput = z.infer<typeof runInputSchema>;
