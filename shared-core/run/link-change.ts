import { z } from 'zod';

/**
 * The probe's line went quiet or came back: unplugged, silent, computer asleep, program closed in mid-run. One that is back with
 * the reason `clock-stepped` was closed for longer than the times say: the computer's clock was set or lost meanwhile.
 * `reader-stopped`: the process that reads the probe ended and took along what it had heard and not handed on; lost from the
 * moment up to which it had, also where the probe was lost already.
 * `probe-changed`: another device brings the head than before, plugged in its place or connected in its stead.
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
    'reader-stopped',
  ]),
});

export type LinkChange = z.infer<typeof linkChangeSchema>;
