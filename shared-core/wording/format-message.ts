import { IntlMessageFormat } from 'intl-messageformat';
import type { Language } from './language.ts';
import { shownValue, type Values } from './message.ts';

/** A sentence as it is filled: text by turns with the names of its places; null where it needs the whole of ICU. */
type Plan = readonly string[] | null;

const place = /\{(\w+)\}/;
/** Plurals, choices, quoted braces and marked-up parts are left to the library. */
const needsLibrary = /\{\w+\s*,|'[{}<]|<\/?\w|''/;

const plans = new Map<string, Plan>();
const compiled = new Map<string, IntlMessageFormat>();

/** Fills the places of a sentence in ICU MessageFormat. Plain places, nearly all there are, need no library. */
export function formatMessage(language: Language, sentence: string, values: Values): string {
  const plan = planOf(sentence);
  if (plan === null) {
    const shown = Object.entries(values).map(([name, value]) => [name, shownValue(value)]);
    return String(compiledMessage(language, sentence).format(Object.fromEntries(shown)));
  }
  let text = plan[0] ?? '';
  for (let index = 1; index < plan.length; index += 2) {
    const name = plan[index] ?? '';
    text += `${shownValue(values[name] ?? `{${name}}`)}${plan[index + 1] ?? ''}`;
  }
  return text;
}

function planOf(sentence: string): Plan {
  let plan = plans.get(sentence);
  if (plan === undefined) {
    plan = needsLibrary.test(sentence) ? null : sentence.split(place);
    plans.set(sentence, plan);
  }
  return plan;
}

/** Parsed once per language and sentence. */
export function compiledMessage(language: Language, sentence: string): IntlMessageFormat {
  const key = `${language} ${sentence}`;
  let message = compiled.get(key);
  if (message === undefined) {
    message = new IntlMessageFormat(sentence, language);
    compiled.set(key, message);
  }
  return message;
}
