import { z } from 'zod';

/** A best value with the ends of its interval (95 % unless the field says otherwise). */
export const estimateSchema = z.strictObject({
  value: z.number(),
  low: z.number(),
  high: z.number(),
});

export type Estimate = z.infer<typeof estimateSchema>;
