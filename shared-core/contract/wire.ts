import { z } from 'zod';
import { serviceProblemSchema } from './service-problem.ts';

/** A request as it crosses the loopback socket; Electron's IPC carries name and body the same way. */
export const wireRequestSchema = z.strictObject({
  id: z.number().int().nonnegative(),
  name: z.string(),
  body: z.unknown(),
});

/** What comes back: the answer to a request, or an event. Bodies are parsed by name. */
export const wireMessageSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('answer'),
    id: z.number().int(),
    result: z.discriminatedUnion('ok', [
      z.strictObject({ ok: z.literal(true), value: z.unknown() }),
      z.strictObject({ ok: z.literal(false), error: serviceProblemSchema }),
    ]),
  }),
  z.strictObject({ type: z.literal('event'), name: z.string(), body: z.unknown() }),
]);

export type WireRequest = z.infer<typeof wireRequestSchema>;
export type WireMessage = z.infer<typeof wireMessageSchema>;
