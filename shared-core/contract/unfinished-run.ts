import { z } from 'zod';

/** A run that was cut off with the program, as far as it was recorded. */
export const unfinishedRunSchema = z.strictObject({
  runId: z.string(),
  name: z.string(),
  startedAtIso: z.string(),
  /** When its last record was written. */
  brokeOffAtIso: z.string(),
  /** How much of it is recorded [s]. */
  durationS: z.number(),
});
