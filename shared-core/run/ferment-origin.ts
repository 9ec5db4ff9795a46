import { z } from 'zod';

const ninety = z.strictObject({ low: z.number(), value: z.number(), high: z.number() });

/** Where a charge came from: a ferment that was kept in this program, as it was judged when the still was charged with it. */
export const fermentOriginSchema = z.strictObject({
  fermentId: z.string().min(1).max(120),
  name: z.string().min(1).max(120),
  wentIn: z.string().max(400),
  beganAtIso: z.iso.datetime(),
  chargedAtIso: z.iso.datetime(),
  entries: z.number().int().min(0),
  state: z.string().min(1).max(40),
  /** 90 % interval [% vol]. */
  strengthAbv: ninety,
  /** Fermentable sugar that a litre of the ferment began with, as hexose [g/L], and its standard uncertainty; null where nothing told it. */
  sugarGPerL: z
    .strictObject({
      value: z.number().positive().max(1000),
      standardUncertainty: z.number().min(0),
    })
    .nullable(),
});

export type FermentOrigin = z.infer<typeof fermentOriginSchema>;
