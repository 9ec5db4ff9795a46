import { z } from 'zod';
import { worded } from '../wording/index.ts';
import { fermentReadSchema } from './ferment-read.ts';

const positive = (most: number, error: string) =>
  z.number({ error }).positive({ error }).max(most, { error });

/** What is known of a ferment as it begins. */
export const statedFermentSchema = z.strictObject({
  name: z
    .string()
    .trim()
    .min(1, { error: worded('A name, please') })
    .max(120, { error: worded('At most 120 characters, please') }),
  beganAtIso: z.iso.datetime({ error: worded('A day and a time, please') }),
  volumeMl: positive(1e7, worded('A volume in mL, more than 0')),
  /** All the fermentable sugar in it as hexose [g], two ends of what is known; null where that is not known. */
  sugarG: z
    .strictObject({ low: z.number().min(0).max(1e7), high: z.number().positive().max(1e7) })
    .refine(({ low, high }) => low <= high, { error: worded('The lower end first, please') })
    .nullable(),
  /** In the person's words. */
  wentIn: z.string().max(400, { error: worded('At most 400 characters, please') }),
});

/** Why what was stated was put right; what stood before stays in the file. */
export const fermentReasonSchema = z
  .string()
  .trim()
  .min(1, { error: worded('A reason, please') })
  .max(400, { error: worded('At most 400 characters, please') });

/** What was stated until then, and why it was put right. */
const fermentCorrectionSchema = z.strictObject({
  keptAtIso: z.iso.datetime(),
  before: statedFermentSchema,
  reason: fermentReasonSchema,
});

/** A reading as it was kept. It is never changed; it may be withdrawn. */
export const fermentEntrySchema = z.strictObject({
  entryId: z.number().int().min(1),
  keptAtIso: z.iso.datetime(),
  read: fermentReadSchema,
  withdrawnAtIso: z.iso.datetime().nullable(),
});

const fermentIdPattern = /^[0-9A-Za-z][0-9A-Za-z-]{0,79}$/;
export const fermentIdSchema = z.string().regex(fermentIdPattern);

/** A ferment with all that was written down of it. */
export const keptFermentSchema = z.strictObject({
  fermentId: fermentIdSchema,
  /** As it was put right last. */
  stated: statedFermentSchema,
  /** Oldest first. */
  corrections: z.array(fermentCorrectionSchema),
  /** In the order in which they were kept. */
  entries: z.array(fermentEntrySchema),
  /** Lines of its file that could not be read and are left as they are. */
  unreadableLines: z.number().int().min(0),
});

export type StatedFerment = z.infer<typeof statedFermentSchema>;
export type FermentEntry = z.infer<typeof fermentEntrySchema>;
export type KeptFerment = z.infer<typeof keptFermentSchema>;
