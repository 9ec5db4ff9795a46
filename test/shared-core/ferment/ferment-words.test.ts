import { describe, expect, test } from 'vitest';
import type { FermentConclusion } from '../../../shared-core/ferment/conclude-ferment.ts';
import { whyFerment } from '../../../shared-core/ferment/ferment-words.ts';
import type { FermentBelief } from '../../../shared-core/ferment/follow-ferment.ts';

const about = (value: number, spread = 0.002) => ({
  low: value - spread,
  value,
  high: value + spread,
});
const concluded: FermentConclusion = {
  state: 'working',
  strengthAbv: about(5.04, 0.4),
  gravity: about(1.02),
  originalGravity: about(1.06),
  endGravity: about(0.996),
  aboveUsualEnd: 0.024,
  isStill: false,
  tellsEnd: true,
  donePercent: about(62.4, 4),
  perDay: about(0.0091),
  inTwoDays: about(0.018),
  doneH: null,
  nearProbability: 0,
  stuckProbability: 0,
};
const hydrometer = { gravity: { value: 1.02, uncertainty: 0.001 } };

/** What is said of it; of the belief only these parts go into words. */
function why(
  changed: Partial<FermentConclusion>,
  belief: { timeH?: number; temperatureC?: number | null; evidence?: readonly unknown[] } = {},
): string {
  const parts = { timeH: 70, temperatureC: null, evidence: [hydrometer], ...belief };
  return whyFerment({ ...concluded, ...changed }, parts as unknown as FermentBelief);
}

describe('why a ferment is said to be in its state', () => {
  test('not started: how long, and from sixty hours on that it is late', () => {
    const early = 'Nothing has fermented yet that the readings could tell after 60 h.';
    expect(why({ state: 'not-started' }, { timeH: 60 })).toBe(early);
    expect(why({ state: 'not-started' }, { timeH: 61.4 })).toBe(
      'Nothing has fermented yet that the readings could tell after 61 h. That is late: see whether it is warm enough and whether the yeast is alive.',
    );
  });

  test('working: how far, and how fast towards which end', () => {
    expect(why({})).toBe(
      'It works: 62 % (58 to 66 %) of what can ferment has fermented; the gravity, some 1.020, falls by 0.009 a day towards 0.996 (0.994 to 0.998).',
    );
    expect(why({ perDay: about(-0.002), donePercent: about(97, 6) })).toBe(
      'It works: 97 % (91 to 100 %) of what can ferment has fermented; the gravity, some 1.020, falls by 0.000 a day towards 0.996 (0.994 to 0.998).',
    );
    expect(why({ donePercent: about(97.1, 3) })).toBe(
      'It is all but done at 1.020, with the end expected near 0.996 (0.994 to 0.998): it counts as finished once it has been steady for two days.',
    );
    expect(why({ tellsEnd: false, donePercent: about(99) })).toBe(
      "It works: it has made some 5.0 % vol. How far it has to go, masses and bubbles alone don't tell: measure the gravity.",
    );
  });

  test('slow: whether it moves at all', () => {
    expect(why({ state: 'slow' })).toBe(
      'It goes on, but slowly: the gravity, some 1.020, falls by only 0.009 a day, and the end is expected near 0.996 (0.994 to 0.998).',
    );
    expect(why({ state: 'slow', isStill: true })).toMatch(
      /^It has hardly moved in two days and may be at its end: it stands near 1\.020, expected 0\.996/,
    );
  });

  test('stuck: where it stands, what may be the cause, and what a strip would tell', () => {
    expect(why({ state: 'stuck' })).toBe(
      'It has all but come to a stand at 1.020, but the end is expected near 0.996 (0.994 to 0.998): stuck? Steady is not finished; warm it, stir it up and read it again before giving it up.',
    );
    expect(why({ state: 'stuck', isStill: true, strengthAbv: about(12.6) })).toContain(
      'It has been steady for two days at 1.020, but the end is expected near 0.996 (0.994 to 0.998): stuck? Steady is not finished; its yeast may bear no more alcohol.',
    );
    expect(why({ state: 'stuck', strengthAbv: about(12.5) })).toContain('warm it, stir it up');
    expect(why({ state: 'stuck', aboveUsualEnd: 0.009 })).toMatch(
      /giving it up\. Some fruit leaves as much that yeast cannot use; a strip for glucose tells\.$/,
    );
    expect(why({ state: 'stuck', aboveUsualEnd: 0.01 })).not.toContain('Some fruit');
    expect(why({ state: 'stuck', tellsEnd: false })).toBe(
      'It stands still, at some 5.0 % vol made, and nothing tells whether that is its end: measure the gravity, or say how much sugar went in.',
    );
  });

  test('finished: by its gravity, or by its masses', () => {
    expect(why({ state: 'finished' })).toBe(
      'It has been steady for two days at 1.020, near the end that is expected, 0.996 (0.994 to 0.998).',
    );
    expect(why({ state: 'finished' }, { evidence: [{ gravity: null }] })).toBe(
      'It has lost no more mass for two days, and 62 % (58 to 66 %) of what its sugar gives is made.',
    );
    expect(why({ state: 'finished' }, { evidence: [{ gravity: null }, hydrometer] })).toContain(
      'steady for two days at',
    );
  });

  test('and its warmth, where that may be the cause', () => {
    const said = (state: FermentConclusion['state'], temperatureC: number | null) =>
      /(At \d+ °C .*)$/.exec(why({ state }, { temperatureC }))?.[1] ?? null;
    expect(said('slow', 15.6)).toBe('At 16 °C it is cold for yeast: keep it warmer.');
    expect([said('slow', 16), said('working', 12), said('slow', null)]).toEqual([null, null, null]);
    expect(said('working', 34.5)).toBe(
      'At 35 °C it is too hot: yeast dies, and ferments get stuck.',
    );
    expect([said('stuck', 34), said('finished', 40), said('finished', 5)]).toEqual([
      null,
      null,
      null,
    ]);
  });
});
