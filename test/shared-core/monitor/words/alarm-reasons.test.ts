import { describe, expect, test } from 'vitest';
import { alarmReason } from '../../../../shared-core/monitor/words/alarm-reasons.ts';
import { factsOf, headAt, limitC } from './facts.ts';

describe('why the heat-off call stands', () => {
  test('a head that sinks a little is falling, not rising by a negative rate', () => {
    const sinking = factsOf(
      {},
      { head: headAt(83.4, -0.35 / 60), outlook: { etaS: 0, passed: 0.999 } },
    );
    expect(alarmReason('plateau-departure', sinking).because).toBe(
      'The head is at 83.4 °C, 5.2 K above the plateau it held, falling 0.3 K/min. The limit of 80 % vol (82.8 °C on this probe) is reached, over 99 % sure.',
    );
  });

  test('a limit that is near but not reached is not said to be reached', () => {
    const near = factsOf({}, { head: headAt(limitC - 0.1), outlook: { etaS: null, passed: 0.3 } });
    expect(alarmReason('plateau-departure', near).because).toMatch(
      /is 0\.1 K away, within what probe and air pressure leave open\.$/,
    );
  });

  test('a head that stands is not said to reach the limit in seconds, nor half a chance to be sure', () => {
    const standing = factsOf({}, { head: headAt(limitC - 0.1), outlook: { etaS: 23 } });
    expect(alarmReason('plateau-departure', standing).because).toMatch(/is 0\.1 K away/);
    const half = factsOf({}, { head: headAt(limitC), outlook: { etaS: 0, passed: 0.52 } });
    expect(alarmReason('plateau-departure', half).because).toMatch(
      /is just about reached: 52 % sure that it is passed\.$/,
    );
  });

  test('what takes it back is where the alarm really clears: under the limit and near the plateau', () => {
    const { wouldChangeIf } = alarmReason('plateau-departure', factsOf({}, { head: headAt(83) }));
    expect(wouldChangeIf).toBe('The head falling back below 78.5 °C, or the heat taken off.');
  });

  test('a doubted head that rises away says what it read, not what strength that is', () => {
    const doubtfulRise = { lowestC: 70.1, highestC: 72.4, toLimitK: 5.3, endedS: null };
    const { because, act, wouldChangeIf } = alarmReason(
      'plateau-departure',
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
    expect(alarmReason('plateau-departure', passed).because).toMatch(/is reached, over 99 % sure/);
  });

  test('the heat is said to be on only where somebody marked it', () => {
    const over = { head: headAt(84), outlook: { passed: 0.99 } };
    expect(alarmReason('over-limit', factsOf({ heat: 'unknown' }, over)).because).toMatch(
      /no mark says that the heat is off\.$/,
    );
    expect(alarmReason('over-limit', factsOf({}, over)).because).toMatch(/the heat is still on\.$/);
  });
});
