import { z } from 'zod';

/** More than this is never burned [mL]. */
export const mostBurnedMl = 1;

/** What was seen when a sample was lit. */
export const proofSights = ['burned-away', 'burned-and-went-out', 'did-not-burn'] as const;

export const proofSightSchema = z.enum(proofSights);
export type ProofSight = z.infer<typeof proofSightSchema>;

/**
 * A sample burned to prove the product, after the run. `confirmed` holds the ids of the cautions that were confirmed before,
 * by that role; an assistant does not do this alone.
 */
export const proofMarkSchema = z.strictObject({
  type: z.literal('proof-burned'),
  /** Which receiver it is from, in their order from 1. */
  cut: z.number().int().min(1).max(99),
  volumeMl: z.number().positive().max(mostBurnedMl),
  seen: proofSightSchema,
  role: z.enum(['teacher', 'technician']),
  confirmed: z.array(z.string().regex(/^[a-z-]{1,60}$/)).max(40),
});

export type ProofMark = z.infer<typeof proofMarkSchema>;
