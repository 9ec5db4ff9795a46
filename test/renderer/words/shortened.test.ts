import { expect, test } from 'vitest';
import { shortened } from '../../../renderer/words/index.ts';

test('a text is cut after a whole word and never longer than asked for', () => {
  expect([
    shortened('Receiver changed', 24),
    shortened('The class guessed forty millilitres.', 24),
    shortened('Siedesteinchenzugabevergessen!', 24),
    shortened('Receiver changed, 31.0 mL in the old one', 16),
    shortened('Two\nlines', 24),
  ]).toEqual([
    'Receiver changed',
    'The class guessed …',
    'Siedesteinchenzugabeve …',
    'Receiver …',
    'Two lines',
  ]);
});
