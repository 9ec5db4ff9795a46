import { describe, expect, test } from 'vitest';
import { eventBecause } from '../../../../shared-core/monitor/words/event-words.ts';
import { factsOf, headAt } from './facts.ts';

describe('why an event was logged', () => {
  test('a head that fell in the tail did not fall from the plateau, which lies lower', () => {
    const tail = factsOf({ stage: 'tail' }, { head: headAt(84.1), situation: { levelC: 81.4 } });
    expect(eventBecause('vapour-receded', tail)).toBe(
      'The head fell to 84.1 °C, as it does only when no vapour reaches the bulb: the heat was taken away, or a draught cools the column.',
    );
  });

  test('a departure tells where the head stands in plain words: no slope of a few blocks, no figure of the test behind it', () => {
    const leaving = factsOf({}, { head: headAt(78.6, 0.008) });
    expect(eventBecause('plateau-ending', leaving)).toBe(
      'The head is at 78.6 °C, 0.4 K above the 78.2 °C it held: it climbs more than noise explains. The limit is 82.8 °C on this probe.',
    );
  });

  test('drops are counted whole', () => {
    const drops = { over: true, done: 30, wanted: 30, unit: 'drops', estimated: false } as const;
    expect(eventBecause('first-fraction-ended', factsOf({ firstFraction: drops }))).toMatch(
      /^30 of 30 drops are set apart:/,
    );
  });
});
