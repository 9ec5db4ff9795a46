import { compiledMessage, formatMessage } from './format-message.ts';
import { language } from './language.ts';
import { catalogues } from './languages/index.ts';
import type { Values } from './message.ts';
import { messageBehind, rememberMessage, rememberPlain } from './message-memory.ts';

const noValues: Values = {};

/**
 * A sentence in the language of this process. The English sentence is the key, as in gettext: it stands in the code as it is
 * read, and a test finds what a language lacks.
 *
 * @param sentence a literal, with places in ICU MessageFormat
 * @param values what stands in them
 *
 * Source: ICU MessageFormat, https://unicode-org.github.io/icu/userguide/format_parse/messages/
 * @example
 * say('The head is at {temperature}.', { temperature: '78.4 °C' }) // => "The head is at 78.4 °C."
 * say('{count, plural, one {# plate} other {# plates}}', { count: 2 }) // => "2 plates"
 */
export function say(sentence: string, values: Values = noValues): string {
  return formatMessage(language(), translationOf(sentence), values);
}

/**
 * A sentence in English whose message is remembered: for what is recorded, or made in one process and shown in another.
 * {@link told} says it in the language of whoever reads it.
 *
 * @param sentence a literal, with places in ICU MessageFormat
 * @param values what stands in them; texts made by this function are told in their turn, those marked by `asGiven` never
 *
 * Source: as for {@link say}.
 * @example
 * worded('The head fell to {at}.', { at: '77.1 °C' }) // => "The head fell to 77.1 °C."
 */
export function worded(sentence: string, values: Values = noValues): string {
  const text = formatMessage('en', sentence, values);
  // What is nothing but one of its values has been remembered as that.
  if (values === noValues) rememberPlain(text);
  else if (!Object.values(values).includes(text)) rememberMessage(text, { sentence, values });
  return text;
}

/**
 * A text made by {@link worded}, in the language of this process; any other text as it is, even one that a catalogue holds:
 * who wrote it meant it so.
 *
 * @param text in English
 *
 * Source: this project's rule.
 * @example
 * told(worded('The head fell to {at}.', { at: '77.1 °C' })) // => "The head fell to 77.1 °C."
 */
export function told(text: string): string {
  if (language() === 'en') return text;
  const message = messageBehind(text);
  if (message === undefined) return text;
  const values = Object.fromEntries(
    Object.entries(message.values).map(([name, value]) => [
      name,
      typeof value === 'string' ? told(value) : value,
    ]),
  );
  return say(message.sentence, values);
}

/**
 * A sentence some of whose parts are no text, in the language of this process and the order that it asks for.
 *
 * @param sentence a literal in ICU MessageFormat; `<b>…</b>` in it marks up a part of that name
 * @param parts what stands in its places, or for marked-up words what makes a part of them
 *
 * Source: as for {@link say}.
 * @example
 * sayParts('as <b>{words}</b>', { words: 'told', b: (words) => ({ strong: words }) }) // => ["as ", { "strong": ["told"] }]
 */
export function sayParts<T>(
  sentence: string,
  parts: Readonly<Record<string, T | string | ((words: (T | string)[]) => T)>>,
): readonly (T | string)[] {
  const said = compiledMessage(language(), translationOf(sentence)).format<T>(parts);
  return Array.isArray(said) ? said : [said];
}

/** The sentence in the language of this process, its places unfilled. */
function translationOf(sentence: string): string {
  const tongue = language();
  return (tongue === 'en' ? undefined : catalogues[tongue][sentence]) ?? sentence;
}
