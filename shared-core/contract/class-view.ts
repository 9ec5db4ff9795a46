import { z } from 'zod';

/** Whether pupils may look on with phones and tablets of their own; open until the run ends or somebody shuts it. */
export const classViewSchema = z.discriminatedUnion('state', [
  z.strictObject({ state: z.literal('shut') }),
  z.strictObject({
    state: z.literal('open'),
    /** What is typed or scanned: this computer in the local network, and the code of this lesson. */
    address: z.string(),
    /** Screens that look on now. */
    onlookers: z.number().int(),
  }),
  z.strictObject({
    state: z.literal('impossible'),
    /** No address in a local network, or the system does not let the program listen there. */
    why: z.enum(['no-network', 'not-allowed']),
  }),
]);

const asks = { commands: true, body: z.strictObject({}), answer: classViewSchema } as const;

/** Requests about the class view: whoever may not command is not even told its address. */
export const classViewRequests = {
  'class-view/status': asks,
  'class-view/open': asks,
  'class-view/shut': asks,
} as const;
