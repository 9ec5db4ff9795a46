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

  test('is told of each event with where the head is', () => {
    const unread = { ...factsOf(), head: null };
    const estimated = { over: true, done: 5.04, wanted: 5, unit: 'mL', estimated: true } as const;
    expect([
      eventBecause('vapour-arrived', factsOf({}, { head: headAt(74.2) })),
      eventBecause('first-fraction-ended', factsOf({ firstFraction: estimated })),
      eventBecause('vapour-returned', factsOf()),
      eventBecause('vapour-returned', unread),
      eventBecause('plateau-ending', unread),
      eventBecause('plateau-ending', factsOf({}, { situation: { levelC: null } })),
    ]).toEqual([
      'The bulb rose steeply to 74.2 °C; vapour at 98.6 kPa is at least 77.5 °C.',
      '5.0 of 5 mL are set apart (estimated): a convention, since light volatiles are too little to be seen by temperature.',
      'The head is back at 78.2 °C.',
      'The head is back at an unknown temperature.',
      'The head is at an unknown temperature: it climbs more than noise explains. The limit is 82.8 °C on this probe.',
      'The head is at 78.2 °C: it climbs more than noise explains. The limit is 82.8 °C on this probe.',
    ]);
  });
});
