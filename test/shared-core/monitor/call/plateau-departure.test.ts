import { describe, expect, test } from 'vitest';
import { plateauDeparture } from '../../../../shared-core/monitor/call/plateau-departure.ts';
import { factsOf, headAt, limitC } from '../words/facts.ts';
import { callSecond, standing } from './call-second.ts';

const { condition, reason, sentence } = plateauDeparture;

describe('why the heat-off call stands', () => {
  test('a head that sinks a little is falling, not rising by a negative rate', () => {
    const sinking = factsOf(
      {},
      { head: headAt(83.4, -0.35 / 60), outlook: { etaS: 0, passed: 0.999 } },
    );
    expect(reason(sinking).because).toBe(
      'The head is at 83.4 °C, 5.2 K above the plateau it held, falling 0.3 K/min. The limit of 80 % vol (82.8 °C on this probe) is reached, over 99 % sure.',
    );
  });

  test('a limit that is near but not reached is not said to be reached', () => {
    const near = factsOf({}, { head: headAt(limitC - 0.1), outlook: { etaS: null, passed: 0.3 } });
    expect(reason(near).because).toMatch(
      /is 0\.1 K away, within what probe and air pressure leave open\.$/,
    );
  });

  test('a head that stands is not said to reach the limit in seconds, nor half a chance to be sure', () => {
    const standing = factsOf({}, { head: headAt(limitC - 0.1), outlook: { etaS: 23 } });
    expect(reason(standing).because).toMatch(/is 0\.1 K away/);
    const half = factsOf({}, { head: headAt(limitC), outlook: { etaS: 0, passed: 0.52 } });
    expect(reason(half).because).toMatch(/is just about reached: 52 % sure that it is passed\.$/);
  });

  test('what takes it back is where the alarm really clears: under the limit and near the plateau', () => {
    const { wouldChangeIf } = reason(factsOf({}, { head: headAt(83) }));
    expect(wouldChangeIf).toBe('The head falling back below 78.5 °C, or the heat taken off.');
  });

  test('a doubted head that rises away says what it read, not what strength that is', () => {
    const doubtfulRise = { lowestC: 70.1, highestC: 72.4, toLimitK: 5.3, endedS: null };
    const { because, act, wouldChangeIf } = reason(
      factsOf({ doubtfulRise }, { head: headAt(77.2) }),
    );
    expect(because).toBe(
      'The head cannot be relied on: it has read as low as 70.1 °C, and the azeotrope at 98.6 kPa boils at 77.5 °C. Since then it has risen to 77.2 °C, beyond all it read before (72.4 °C at most). From the azeotrope to the limit of 80 % vol vapour rises by 5.3 K: the limit may be reached.',
    );
    expect(act).toBe('Check the distillate; take the heat off if it is weak.');
    expect(wouldChangeIf).toMatch(/below 72\.4 °C/);
    const passed = factsOf(
      { doubtfulRise, stage: 'tail' },
      { head: headAt(83.4), outlook: { etaS: 0, passed: 0.999 } },
    );
    expect(reason(passed).because).toMatch(/is reached, over 99 % sure/);
  });
});

describe('the heat-off call', () => {
  const due = { outlook: { heatOffDue: true } };

  test('comes when the limit is due to a head that has been held below it, and stands until it is back', () => {
    expect(condition(callSecond(factsOf({}, due)))).toBe(true);
    expect(condition(callSecond(factsOf({ heatOffArmed: false }, due)))).toBe(false);
    expect(condition(callSecond(factsOf()))).toBe(false);
    // The limit is 82.8 °C and the plateau 78.2 °C: with the deadband of 0.3 K it is back below 78.5 °C.
    const stands = (headC: number) =>
      condition(callSecond(factsOf({}, { head: headAt(headC) }), { track: standing }));
    expect([stands(78.6), stands(78.4)]).toEqual([true, false]);
  });

  test('needs heat and vapour', () => {
    const gone = { ...due, plateau: { recededSinceS: 1700 } };
    const without = [
      factsOf({ heat: 'off' }, due),
      factsOf({ stage: 'cool-down' }, due),
      factsOf({}, gone),
    ];
    expect(without.map((facts) => condition(callSecond(facts)))).toEqual([false, false, false]);
  });

  test('comes for a limit passed without a plateau after half a minute, but not for heat brought back in the tail', () => {
    const unheld = (limitPassedUnheldForS: number, stage: 'first-fraction' | 'tail') =>
      factsOf({ limitPassedUnheldForS, stage, heatOffArmed: false });
    expect(condition(callSecond(unheld(30, 'first-fraction')))).toBe(false);
    expect(condition(callSecond(unheld(31, 'first-fraction')))).toBe(true);
    expect(condition(callSecond(unheld(31, 'tail')))).toBe(true);
    const called = { track: { raisedS: 900, clearedS: 1000 } };
    expect(condition(callSecond(unheld(31, 'tail'), called))).toBe(false);
    expect(reason(unheld(31, 'first-fraction')).because).toMatch(
      /has been above the limit of 80 % vol \(82\.8 °C on this probe\) for 31 s\./,
    );
  });

  test('stands while a doubted head rises away, even where its vapour seems to have gone', () => {
    const rise = { lowestC: 70.1, highestC: 72.4, toLimitK: 5.3, endedS: null };
    const seemsGone = { plateau: { recededSinceS: 1700 } };
    expect(condition(callSecond(factsOf({ doubtfulRise: rise }, seemsGone)))).toBe(true);
    const off = factsOf({ doubtfulRise: rise, heat: 'off' }, seemsGone);
    expect(condition(callSecond(off))).toBe(false);
  });

  test('says by the stage what is ending', () => {
    const rise = { lowestC: 70.1, highestC: 72.4, toLimitK: 5.3, endedS: null };
    expect(
      [
        factsOf(),
        factsOf({ stage: 'tail' }),
        factsOf({ stage: 'first-fraction' }),
        factsOf({ doubtfulRise: rise }),
      ].map(sentence),
    ).toEqual([
      'The main fraction is ending.',
      'The main fraction has ended.',
      'The head rises past the limit before the first fraction has ended.',
      'The head rises away from its level; it cannot be relied on for strength.',
    ]);
  });
});
