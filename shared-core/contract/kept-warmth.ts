import { z } from 'zod';
import { fermentIdSchema } from '../ferment-log/index.ts';
import { warmthBandSchema, warmthNowSchema, warmthSpanSchema } from '../ferment-warmth/index.ts';
import { channelSchema } from '../run/index.ts';

/** How a ferment is kept warm under watch: by which channel of the probe, within which band, since when. */
const keepingSchema = z.strictObject({
  band: warmthBandSchema,
  channel: channelSchema,
  sinceIso: z.iso.datetime(),
});

/** The ferment that is kept warm under watch now. */
export const keptWarmSchema = z.strictObject({
  fermentId: fermentIdSchema,
  name: z.string(),
  keeping: keepingSchema,
  now: warmthNowSchema,
  /** A run has taken the probe for the still: nothing is listened to until it ends. */
  isProbeAtStill: z.boolean(),
  /** Why what is heard is not on the disk; it waits. */
  unsaved: z.string().nullable(),
});

export type KeptWarm = z.infer<typeof keptWarmSchema>;

const reportSchema = z.strictObject({
  fermentId: fermentIdSchema,
  /** As it was kept the last time; null where it never was. */
  keeping: keepingSchema.nullable(),
  isKeptNow: z.boolean(),
  /** Stretches of ten minutes in which it was heard, in order. */
  stretches: z.array(warmthSpanSchema),
});

export type WarmthReport = z.infer<typeof reportSchema>;

const oneFerment = z.strictObject({ fermentId: fermentIdSchema });

/** Requests about a ferment that is kept warm; one at a time is. */
export const warmthRequests = {
  'warmth/now': {
    commands: false,
    body: z.strictObject({}),
    answer: z.strictObject({ kept: keptWarmSchema.nullable() }),
  },
  'warmth/report': { commands: false, body: oneFerment, answer: reportSchema },
  /** Begins, or goes on with another band or channel; whichever ferment was kept before is left. */
  'warmth/keep': {
    commands: true,
    body: z.strictObject({
      fermentId: fermentIdSchema,
      band: warmthBandSchema,
      channel: channelSchema,
    }),
    answer: reportSchema,
  },
  'warmth/leave': { commands: true, body: oneFerment, answer: reportSchema },
} as const;
