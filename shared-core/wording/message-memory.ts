import type { Message, Value, Wording } from './message.ts';

/**
 * What the texts of late were made from. A text says itself what it was made of only to whoever takes it apart, which nobody
 * should; so the messages are kept beside the texts, those of late. Whoever forgets one shows it in
 * English. Some hours of sentences; a lesson makes two or three a second.
 *
 * In two halves: once the newer one is full the older is forgotten whole, but for what was asked for meanwhile. So nothing has to be
 * put in order for a text that is asked for ten times a second.
 */
const mostInAHalf = 30_000;
let newer = new Map<string, Message>();
let older = new Map<string, Message>();
/**
 * Sentences without places, and those made of nothing but such: no more than stand in the code. Many are made once, when their
 * file is loaded, and shown hours later.
 */
const lasting = new Map<string, Message>();

export function rememberPlain(sentence: string): void {
  if (!lasting.has(sentence)) lasting.set(sentence, { sentence, values: {} });
}

export function rememberMessage(text: string, message: Message): void {
  if (newer.has(text) || lasting.has(text)) return;
  if (Object.values(message.values).every(isLasting)) lasting.set(text, message);
  else keep(text, message);
}

function keep(text: string, message: Message): void {
  if (newer.size >= mostInAHalf) {
    older = newer;
    newer = new Map();
  }
  newer.set(text, message);
}

/** What a text was made from; undefined of a text that nobody made here. Asked for again, it is not the next to be forgotten. */
export function messageBehind(text: string): Message | undefined {
  const message = newer.get(text) ?? lasting.get(text);
  if (message !== undefined) return message;
  const kept = older.get(text);
  if (kept !== undefined) keep(text, kept);
  return kept;
}

const isLasting = (value: Value): boolean => typeof value === 'string' && lasting.has(value);

/**
 * What the texts were made from, and what is said within them, to send with them to another process.
 *
 * @param texts as made by `worded`
 *
 * Source: this project's rule.
 * @example
 * wordingOf(['Made by nobody.']) // => {}
 */
export function wordingOf(texts: readonly string[]): Wording {
  const wording: Record<string, Message> = {};
  const add = (text: string): void => {
    const message = messageBehind(text);
    if (message === undefined || Object.hasOwn(wording, text)) return;
    wording[text] = message;
    for (const value of Object.values(message.values)) {
      if (typeof value === 'string') add(value);
    }
  };
  for (const text of texts) add(text);
  return wording;
}

/**
 * Takes up what came with texts from another process.
 *
 * @param wording as {@link wordingOf} made it
 *
 * Source: this project's rule.
 * @example
 * const message = { sentence: 'About {at}.', values: { at: '9' } };
 * learnWording({ 'About 9.': message });
 * wordingOf(['About 9.'])['About 9.'].sentence // => "About {at}."
 */
export function learnWording(wording: Wording): void {
  for (const [text, message] of Object.entries(wording)) rememberMessage(text, message);
}
