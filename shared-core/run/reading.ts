import { z } from 'zod';
import { channelSchema } from './channel.ts';

/** Units a reading is stored in; probes that speak °F, K or ohms are converted before. */
export const readingUnitSchema = z.enum(['°C', 'g', 'mL', 'kPa', '1']);

/**
 * `good`: parsed and physically possible. `suspect`: kept and plotted, but staging waits
 * (a power-on value, a spike). `bad`: open circuit or impossible; shown in the record, never used.
 */
export const readingQualitySchema = z.enum(['good', 'suspect', 'bad']);

/** One value of one channel, `timeS` seconds after the run began on a monotonic clock. */
export const readingSchema = z.strictObject({
  kind: z.literal('reading'),
  timeS: z.number().nonnegative(),
  channel: channelSchema,
  value: z.number(),
  unit: readingUnitSchema,
  quality: readingQualitySchema,
});

export type ReadingUnit = z.infer<typeof readingUnitSchema>;
export type ReadingQuality = z.infer<typeof readingQualitySchema>;
export type Reading = z.infer<typeof readingSchema>;
