import { expect, test } from 'vitest';
import { judgeFerment } from '#shared-core';
import { stateWords } from '../../../renderer/ferment/ferment-words.ts';

test('a ferment of which nobody has read anything is not called not started: it may have been at work for days', () => {
  const facts = { volumeMl: 1000, sugarG: null };
  const reading = { timeH: 1, gravity: 1.05, massG: null, temperatureC: 20, bubblesPerMin: null };
  const read = judgeFerment([{ ...reading, isDegassed: false }], facts);
  expect([judgeFerment([], facts), read].map(stateWords)).toEqual(['Not known yet', 'Not started']);
});
