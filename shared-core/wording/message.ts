import { z } from 'zod';

const asGivenSchema = z.strictObject({ asGiven: z.string() });

/** What a person, a file or a device wrote: no words of ours, even where it reads like them. */
export interface AsGiven {
  readonly asGiven: string;
}

/** What stands in a place of a sentence: words, what somebody else wrote, or a number that a plural goes by. */
export type Value = string | number | AsGiven;
export type Values = Readonly<Record<string, Value>>;

/**
 * Marks what a person, a file or a device wrote, so that it stays as it is in every language: a column that pupils titled
 * "Time" is looked for under that title.
 *
 * @param text as it was written
 *
 * Source: this project's rule.
 * @example
 * worded('{column} was taken for the head temperature.', { column: asGiven('Time') }) // => "Time was taken for the head temperature."
 */
export function asGiven(text: string): AsGiven {
  return { asGiven: text };
}

/** The text or number of a value, whoever wrote it. */
export const shownValue = (value: Value): string | number =>
  typeof value === 'object' ? value.asGiven : value;

/** An English sentence with places in ICU MessageFormat, and what stands in them. */
export const messageSchema = z.strictObject({
  sentence: z.string(),
  values: z.record(z.string(), z.union([z.string(), z.number(), asGivenSchema])),
});

export interface Message {
  readonly sentence: string;
  readonly values: Values;
}

/** What English texts were made from, so that they can be said in another language where they are shown. */
export const wordingSchema = z.record(z.string(), messageSchema);
export type Wording = Readonly<Record<string, Message>>;
