import { describe, expect, test } from 'vitest';
import { plateauDeparture } from '../../../../shared-core/monitor/call/plateau-departure.ts';
import { aheadWords, followLimitAhead } from '../../../../shared-core/monitor/words/limit-ahead.ts';
import { factsOf, headAt, limitC } from '../words/facts.ts';
import { callSecond, standsBy } from './call-second.ts';

const { condition, reason, sentence } = plateauDeparture;

describe('why the heat-off call stands', () => {
  test('a head that sinks a little is falling, not rising by a negative rate', () => {
    const sinking = factsOf(
      {},
      { head: headAt(83.4, -0.35 / 60), outlook: { etaS: 0, passed: 0.999 } },
    );
    expect(reason(sinking).because).toBe(
      'The head is at 83.4 °C, 5.2 K above the level it held, falling 0.3 K/min. The limit of 80 % vol (82.8 °C on this probe) is reached, over 99 % sure.',
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

  test('a limit ahead is told by the rise of the vapour and in the minutes of the sentence, not in seconds that gap and rate of the bulb belie', () => {
    const rising = factsOf(
      {},
      { head: headAt(limitC - 0.03, 1 / 60), outlook: { etaS: 1.8, heatOffDue: true } },
    );
    expect(reason(rising).because).toMatch(
      / comes within 2 min by the rise of the vapour, which runs ahead of the bulb \(reaction time 45 s\)\.$/,
    );
    const line = followLimitAhead(null, rising, true);
    expect(line && reason(rising).because.includes(aheadWords(line, rising.timeS))).toBe(true);
  });

  test('nothing is said of a level or a rate where there is no head, and none of a limit that no rise foresees', () => {
    const etaS = (value: number | null) => ({
      ...factsOf({}, { outlook: { etaS: value, passed: 0.95 } }),
      head: null,
    });
    const limit = 'The limit of 80 % vol (82.8 °C on this probe)';
    expect([0, 30, null].map((value) => reason(etaS(value)).because)).toEqual([
      `The head is at unknown. ${limit} is reached, 95 % sure.`,
      ...Array(2).fill(
        `The head is at unknown. ${limit} is less than 0.1 K away, within what probe and air pressure leave open.`,
      ),
    ]);
    const unforeseen = factsOf({}, { head: headAt(limitC - 0.5, 1 / 60), outlook: { etaS: null } });
    expect(reason(unforeseen).because).toContain('is 0.5 K away, within what probe');
  });

  test('what takes it back is a head that is under the limit by more than it wavers', () => {
    const { wouldChangeIf } = reason(factsOf({}, { head: headAt(83) }));
    expect(wouldChangeIf).toBe('The head falling back below 82.5 °C, or the heat taken off.');
  });
});

describe('the heat-off call', () => {
  const due = { outlook: { heatOffDue: true } };

  test('comes when the limit is due, and stands until the vapour is strong again or has been gone for long', () => {
    expect(condition(callSecond(factsOf({}, due)))).toBe(true);
    expect(condition(callSecond(factsOf()))).toBe(false);
    const stands = standsBy(condition, 'passedWithinReaction');
    expect([stands(0.3), stands(0.2), stands(0.9, 59), stands(0.9, 60)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  test('needs heat and vapour', () => {
    const gone = { ...due, situation: { recededSinceS: 1700 } };
    const without = [
      factsOf({ heat: 'off' }, due),
      factsOf({ stage: 'cool-down' }, due),
      factsOf({}, gone),
    ];
    expect(without.map((facts) => condition(callSecond(facts)))).toEqual([false, false, false]);
  });

  test('does not come again for heat brought back in the tail, but does for one who was never called', () => {
    const inTail = factsOf({ stage: 'tail' }, due);
    expect(condition(callSecond(inTail))).toBe(true);
    expect(condition(callSecond(inTail, { track: { raisedS: 900, clearedS: 1000 } }))).toBe(false);
  });

  test('says by the stage what is ending', () => {
    expect(
      [factsOf(), factsOf({ stage: 'tail' }), factsOf({ stage: 'first-fraction' })].map(sentence),
    ).toEqual([
      'The main fraction is ending.',
      'The main fraction has ended.',
      'The head rises past the limit before the first fraction has ended.',
    ]);
  });
});
