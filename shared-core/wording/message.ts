import { z } from 'zod';

/** What stands in the places of a sentence: text that is shown as it is, or a number that a plural goes by. */
export type Values = Readonly<Record<string, string | number>>;

/** An English sentence with places in ICU MessageFormat, and what stands in them. */
export const messageSchema = z.strictObject({
  sentence: z.string(),
  values: z.record(z.string(), z.union([z.string(), z.number()])),
});

export interface Message {
  readonly sentence: string;
  readonly values: Values;
}

/** What English texts were made from, so that they can be said in another language where they are shown. */
export const wordingSchema = z.record(z.string(), messageSchema);
export type Wording = Readonly<Record<string, Message>>;
