import { z } from 'zod';

/** A best value with the ends of its coverage interval, all in one unit (95 % unless the field says otherwise; JCGM 101, 3.12). */
export const estimateSchema = z.strictObject({
  value: z.number(),
  low: z.number(),
  high: z.number(),
});

export type Estimate = z.infer<typeof estimateSchema>;

/** The same estimate in another quantity: each number through a rising function. */
export function mapEstimate(estimate: Estimate, rising: (value: number) => number): Estimate {
  return {
    value: rising(estimate.value),
    low: rising(estimate.low),
    high: rising(estimate.high),
  };
}
