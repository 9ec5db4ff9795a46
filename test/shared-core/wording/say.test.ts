import { afterEach, expect, test } from 'vitest';
import { compiledMessage, formatMessage } from '../../../shared-core/wording/format-message.ts';
import { setLanguage } from '../../../shared-core/wording/language.ts';
import { asGiven } from '../../../shared-core/wording/message.ts';
import { learnWording, wordingOf } from '../../../shared-core/wording/message-memory.ts';
import { say, told, worded } from '../../../shared-core/wording/say.ts';

afterEach(() => setLanguage('en'));

test('a sentence is said in the language of the process, in English where it has none', () => {
  const sentences = () => [say('Heat off'), say('No catalogue holds {what}.', { what: 'this' })];
  expect(sentences()).toEqual(['Heat off', 'No catalogue holds this.']);
  setLanguage('de');
  expect(sentences()).toEqual(['Wärme weg', 'No catalogue holds this.']);
});

test('what is worded is English in every process, and told in the language of whoever reads it, with all it holds', () => {
  setLanguage('de');
  const text = worded('The head cannot be read: {probeFault}.', {
    probeFault: worded('the probe sends nothing'),
  });
  expect(text).toBe('The head cannot be read: the probe sends nothing.');
  expect(told(text)).toBe('Der Kopf ist nicht zu lesen: die Sonde sendet nichts.');
  expect(told('Written by a person.')).toBe('Written by a person.');
});

test('what somebody else wrote stays as it was written, even where it reads like words of the program', () => {
  worded('Mass');
  const inside = worded('No time can be read in the column "{column}".', {
    column: asGiven('Mass'),
  });
  const counted = worded('{count, plural, one {# plate} other {# plates}} of {name}', {
    count: 2,
    name: asGiven('Mass'),
  });
  setLanguage('de');
  expect(told(inside)).toBe('In der Spalte „Mass“ ist keine Zeit zu lesen.');
  expect(told(counted)).toBe('2 plates of Mass');
  // The catalogue holds it, but nobody worded it: it is a person's.
  expect(say('Heat off')).toBe('Wärme weg');
  expect(told('Heat off')).toBe('Heat off');
});

test('a sentence made of nothing but fixed ones is told however many were made since', () => {
  const act = worded('Take the heat off now.');
  const made = worded('{act} Then read the thermometer.', { act });
  for (let each = 0; each < 60_002; each += 1) worded('The head is at {at}.', { at: `${each}` });
  expect(wordingOf([made])).toEqual({
    [made]: { sentence: '{act} Then read the thermometer.', values: { act } },
    [act]: { sentence: act, values: {} },
  });
});

test('of all other texts those of late are told, and those that were asked for meanwhile', () => {
  const [asked, forgotten] = ['asked', 'forgotten'].map((at) => worded('{at} for.', { at }));
  for (let each = 0; each < 60_002; each += 1) {
    worded('The head stood at {at}.', { at: `${each}` });
    if (each % 20_000 === 0) wordingOf([asked ?? '']);
  }
  const late = 'The head stood at 30002.';
  const known = wordingOf([asked ?? '', forgotten ?? '', late]);
  expect(Object.keys(known)).toEqual([asked, late]);
});

test('a text that holds a fixed sentence beside what changes is one of late as well, and is forgotten', () => {
  const act = worded('Ease the heat.');
  const made = worded('{act} The head is at {at} now.', { act, at: '81 °C' });
  for (let each = 0; each < 60_002; each += 1) worded('The head came to {at}.', { at: `${each}` });
  expect(wordingOf([made])).toEqual({});
});

test('what texts were made from goes along with them, to whoever has not made them', () => {
  const far = { sentence: 'The head is back at {at}.', values: { at: '81.3 °C' } };
  learnWording({ 'The head is back at 81.3 °C.': far });
  const text = worded('{because} The probe has dropped out {count} times in {time}.', {
    because: 'The head is back at 81.3 °C.',
    count: 3,
    time: '9 min',
  });
  expect(wordingOf([text, 'Written by a person.'])).toEqual({
    [text]: {
      sentence: '{because} The probe has dropped out {count} times in {time}.',
      values: { because: 'The head is back at 81.3 °C.', count: 3, time: '9 min' },
    },
    'The head is back at 81.3 °C.': far,
  });
  setLanguage('de');
  expect(told(text)).toBe(
    'Der Kopf ist zurück bei 81.3 °C. Die Sonde ist 3-mal in 9 min ausgefallen.',
  );
});

test('a text that is nothing but one of its values stays what that was made from', () => {
  const inner = worded('{difference} below', { difference: '1.2 K' });
  expect(worded('{stands}', { stands: inner })).toBe(inner);
  setLanguage('de');
  expect(told(inner)).toBe('1.2 K unter');
});

test('plain places are filled as the library would fill them', () => {
  const sentences = [
    'The head is at {at}{stands}. {outlook}',
    "{at}: it's 5 < 7, and the bulb's lag is told",
    '{count, plural, one {# plate} other {# plates}} of {at}',
    'as <b>{at}</b>',
    'no place at all',
  ];
  const values = { at: '78.3 °C', stands: ', 1 K above', outlook: '', count: 2 };
  const parts = { ...values, b: (words: string[]) => `[${words.join('')}]` };
  for (const sentence of sentences.filter((one) => !one.includes('<b>'))) {
    expect(formatMessage('en', sentence, values)).toBe(
      String(compiledMessage('en', sentence).format(parts)),
    );
  }
});
