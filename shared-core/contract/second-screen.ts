import { z } from 'zod';

/** How a commanding window gets a second one for the class: an address to open, or the shell opens a window. */
export const secondScreenSchema = z.discriminatedUnion('by', [
  z.strictObject({ by: z.literal('address'), address: z.string() }),
  z.strictObject({ by: z.literal('window') }),
]);
