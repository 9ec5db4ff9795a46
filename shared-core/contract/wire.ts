import { z } from 'zod';
import { answeredSchema } from './service-problem.ts';

/** What crosses the loopback socket; Electron's IPC carries name and body the same way. */
export const wire = {
  /**
   * The first message on a socket. `token` is the one from the address (`#token=…`, good
   * once), the `secret` of an earlier welcome (the same window after a reload), or a viewer's token.
   */
  hello: z.strictObject({ token: z.string().min(1).max(200) }),

  /** The socket's close code when the token of a hello is unknown or used up. */
  refusedCode: 4401,

  request: z.strictObject({
    id: z.number().int().nonnegative(),
    name: z.string(),
    body: z.unknown(),
  }),

  /** What comes back: a welcome, the answer to a request, or an event. Bodies are parsed by name. */
  message: z.discriminatedUnion('type', [
    z.strictObject({
      type: z.literal('welcome'),
      /** Keep in sessionStorage; send as the token to come back after a reload or a lost socket. */
      secret: z.string(),
      mayCommand: z.boolean(),
    }),
    z.strictObject({
      type: z.literal('answer'),
      id: z.number().int(),
      result: answeredSchema(z.unknown()),
    }),
    z.strictObject({ type: z.literal('event'), name: z.string(), body: z.unknown() }),
  ]),
} as const;
