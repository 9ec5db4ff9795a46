import { expect, test } from 'vitest';
import { saidWords } from '#shared-core';

const plain = (words: string) => words.replaceAll('\u00a0', '~');

test('a number never leaves its unit at the end of a line', () => {
  const sentence =
    'The head is at 80.4 °C, 2.56 K below 80 % vol (83.6 °C on this probe), changing by 0.42 K/min; 45 s or 3 to 5 min, 31 mL at 98.6 kPa.';
  expect(plain(saidWords(sentence, '.'))).toBe(
    'The head is at 80.4~°C, 2.56~K below 80~%~vol (83.6~°C on this probe), changing by 0.42~K/min; 45~s or 3 to 5~min, 31~mL at 98.6~kPa.',
  );
});

test('other words after a number may go to the next line', () => {
  const sentence = 'Collect the first 2 minutes apart; 3 stones, 7 hours, 4 Kelvin.';
  expect(saidWords(sentence, '.')).toBe(sentence);
});

test('the decimal sign is the one the person reads, the full stop stays', () => {
  expect(plain(saidWords('Held at 78.4 °C. The limit is 83.6 °C.', ','))).toBe(
    'Held at 78,4~°C. The limit is 83,6~°C.',
  );
});
