import { z } from 'zod';

/**
 * The probe's line went quiet or came back: unplugged, silent, computer asleep, program closed in mid-run. One that is back with
 * the reason `clock-stepped` was closed for longer than the times say: the computer's clock was set or lost meanwhile.
 * Part of the record, so that a gap is never mistaken for a steady head.
 */
export const linkChangeSchema = z.strictObject({
  kind: z.literal('link'),
  timeS: z.number().nonnegative(),
  state: z.enum(['lost', 'back']),
  reason: z.enum([
    'unplugged',
    'silent',
    'unreadable',
    'computer-asleep',
    'clock-stepped',
    'probe-changed',
    'program-closed',
  ]),
});

export type LinkChange = z.infer<typeof linkChangeSchema>;
