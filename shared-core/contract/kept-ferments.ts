import { z } from 'zod';
import {
  fermentIdSchema,
  fermentReadSchema,
  fermentReasonSchema,
  keptFermentSchema,
  statedFermentSchema,
} from '../ferment-log/index.ts';

/** Requests about the week before; what is kept is never written over. */
export const fermentRequests = {
  /** Newest first. */
  'ferments/list': {
    commands: false,
    body: z.strictObject({}),
    answer: z.strictObject({ ferments: z.array(keptFermentSchema) }),
  },
  'ferments/begin': {
    commands: true,
    body: z.strictObject({ stated: statedFermentSchema }),
    answer: keptFermentSchema,
  },
  /** Puts right what was stated of it. What stood before stays in the file; every strength is reckoned anew. */
  'ferments/correct': {
    commands: true,
    body: z.strictObject({
      fermentId: fermentIdSchema,
      stated: statedFermentSchema,
      reason: fermentReasonSchema,
    }),
    answer: keptFermentSchema,
  },
  'ferments/enter': {
    commands: true,
    body: z.strictObject({ fermentId: fermentIdSchema, read: fermentReadSchema }),
    answer: keptFermentSchema,
  },
  /** The entry stays in the file; it is no longer counted. */
  'ferments/withdraw': {
    commands: true,
    body: z.strictObject({ fermentId: fermentIdSchema, entryId: z.number().int().min(1) }),
    answer: keptFermentSchema,
  },
} as const;
