import { describe, expect, test } from 'vitest';
import { overLimit } from '../../../../shared-core/monitor/call/over-limit.ts';
import { factsOf, headAt, limitC } from '../words/facts.ts';
import { callSecond, standsBy } from './call-second.ts';

const { condition, reason, sentence } = overLimit;

describe('a head above the limit with the heat on', () => {
  test('is told of once the patience is over, and while the head stays there', () => {
    const over = (weakForS: number) =>
      factsOf({}, { head: headAt(limitC + 1), outlook: { weakForS, passedOfLate: 0.99 } });
    expect(condition(callSecond(over(45)))).toBe(false);
    expect(condition(callSecond(over(46)))).toBe(true);
    const stands = standsBy(condition, 'passedOfLate');
    // Until the vapour is strong again, or has been gone for a minute.
    expect([stands(0.3), stands(0.2), stands(0.9, 59), stands(0.9, 60)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  test('is not told of to whoever has just been called to take the heat off', () => {
    const facts = factsOf({ timeS: 1800 }, { head: headAt(limitC + 1), outlook: { weakForS: 60 } });
    const calledS = (raisedS: number, active = true) =>
      condition(callSecond(facts, { others: { 'plateau-departure': { active, raisedS } } }));
    // The reaction time of 45 s and a minute for the head to fall.
    expect([calledS(1700), calledS(1695), calledS(1700, false)]).toEqual([false, true, true]);
  });

  test('needs heat and vapour', () => {
    const weak = { outlook: { weakForS: 60 } };
    const gone = { ...weak, situation: { recededSinceS: 1700 } };
    expect(condition(callSecond(factsOf({}, weak)))).toBe(true);
    expect(condition(callSecond(factsOf({ heat: 'off' }, weak)))).toBe(false);
    expect(condition(callSecond(factsOf({}, gone)))).toBe(false);
  });

  test('the heat is said to be on only where somebody marked it', () => {
    const over = { head: headAt(84), outlook: { passed: 0.99 } };
    expect(reason(factsOf({ heat: 'unknown' }, over)).because).toMatch(
      /no mark says that the heat is off\.$/,
    );
    expect(reason(factsOf({}, over)).because).toMatch(/the heat is still on\.$/);
  });

  test('says that it is weaker than asked for', () => {
    expect(sentence()).toBe('What comes over is weaker than you asked for.');
  });
});
