import { describe, expect, test } from 'vitest';
import type { Stage, StageSpan } from '#shared-core';
import { concludeVerdict } from '../../../../shared-core/monitor/words/verdict-words.ts';
import { factsOf, headAt } from './facts.ts';

const spans = (...stages: readonly Stage[]): StageSpan[] =>
  stages.map((stage, index) => ({ stage, fromS: 600 * index, toS: null, because: '' }));

describe('a verdict of no main fraction', () => {
  test('does not say that a strong head passed the limit when the still cooled down before', () => {
    const cold = factsOf(
      { stage: 'cool-down' },
      { head: headAt(40), situation: { lowestLevelC: 74.4 + 3.5, recededSinceS: 1500 } },
    );
    expect(concludeVerdict(cold, spans('warm-up', 'first-fraction', 'cool-down'))).toEqual({
      mainFraction: false,
      because:
        'No main fraction at 80 % vol or more: the head held at 77.9 °C, stronger than 80 % vol (82.8 °C on this probe), but the still cooled down before the first fraction had ended by the convention set. A shorter first fraction or a longer run would help.',
    });
  });

  test('says that the limit was judged passed where the tail was called, and how strong the head had been', () => {
    const { because } = concludeVerdict(
      factsOf({ stage: 'tail' }, { head: headAt(85) }),
      spans('warm-up', 'first-fraction', 'tail'),
    );
    expect(because).toContain('but was judged to have passed it when the first fraction ended');
    expect(because).not.toContain('hardly');
  });

  test('tells the strength of the vapour that held, not that of a bulb which cools', () => {
    const water = factsOf(
      { stage: 'tail' },
      { head: headAt(88.6), situation: { lowestLevelC: 99.2, recededSinceS: 1700 } },
    );
    expect(concludeVerdict(water, spans('warm-up', 'first-fraction', 'tail')).because).toMatch(
      /the lowest the head held at was 99\.2 °C, above 80 % vol \(82\.8 °C on this probe\)\. Vapour at that temperature has 0–\d+ % vol\. The charge held hardly any alcohol, or had lost it\.$/,
    );
  });

  test('where weak vapour held, names what would have made it stronger', () => {
    const weak = factsOf({ stage: 'tail' }, { situation: { lowestLevelC: 87 } });
    expect(concludeVerdict(weak, spans('warm-up', 'first-fraction', 'tail')).because).toMatch(
      /Vapour at that temperature has \d\d–\d\d % vol\. Too few plates, too little reflux or a weak charge;/,
    );
  });
});
