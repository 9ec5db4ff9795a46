import { z } from 'zod';
import { estimateSchema } from '../uncertainty/index.ts';

/** When the main fraction is expected to end and what will have been collected (90 % intervals). */
export const forecastViewSchema = z.strictObject({
  madeS: z.number(),
  mainFractionEndS: estimateSchema.nullable(),
  /** The same if the heat were eased by a quarter now. */
  mainFractionEndIfEasedS: estimateSchema.nullable(),
  distillateMlAtEnd: estimateSchema.nullable(),
  potStrengthAbv: estimateSchema.nullable(),
  potVolumeMl: estimateSchema.nullable(),
  collectedMl: estimateSchema.nullable(),
  wouldHelp: z.string().nullable(),
  /** Why the range is wider than it was, or none is told: the still does not do what the model expects; null where it does. */
  doubt: z.string().nullable(),
});

export type ForecastView = z.infer<typeof forecastViewSchema>;
