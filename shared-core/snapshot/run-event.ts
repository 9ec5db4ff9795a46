import { z } from 'zod';

/** Information, not alarms: nothing has to be done. */
export const runEventNameSchema = z.enum([
  'vapour-arrived',
  'first-fraction-ended',
  'plateau-ending',
  'vapour-receded',
  'vapour-returned',
]);

export const runEventSchema = z.strictObject({
  event: runEventNameSchema,
  timeS: z.number(),
  because: z.string(),
});

export type RunEventName = z.infer<typeof runEventNameSchema>;
export type RunEvent = z.infer<typeof runEventSchema>;
