import { expect, test } from 'vitest';
import { createLimitWatch } from '../../../../shared-core/monitor/situation/limit-outlook.ts';
import { normalCumulative } from '../../../../shared-core/monitor/situation/normal.ts';
import type { HeadState } from '../../../../shared-core/monitor/situation/vapour-filter.ts';
import { factsOf, headAt } from '../words/facts.ts';

const { situation, head } = factsOf();
const limitC = 82.8;
/** An offset known to be none. */
const belief = { meanK: 0, sdK: 0.03, offsetsK: [0], weights: [1] };

function watched(readC: (timeS: number) => number, untilS: number, wet = 1) {
  const watch = createLimitWatch(limitC);
  let calledS: number | null = null;
  for (let timeS = 1; timeS <= untilS; timeS += 1) {
    if (head === null) throw new Error('There is a head.');
    const rateKPerS = readC(timeS) - readC(timeS - 1);
    watch.second({
      head: { ...head, ...headAt(readC(timeS), rateKPerS), wet },
      situation,
      belief,
      limitC,
      reactionTimeS: 45,
    });
    if (watch.outlook().heatOffDue) calledS ??= timeS;
  }
  return { calledS, watch, outlook: watch.outlook() };
}

test('a head on a ramp is called when half of the cup would be weak after the reaction time', () => {
  // 0.6 K/min: the limit is reached at 1060 s. Looked ahead by 45 s the ramp passes it at 1015 s; an exponential mean of
  // 40 s of a step from 0 to 1 is at one half 40 s · ln 2 = 28 s later.
  const { calledS } = watched((timeS) => 78.2 + 0.01 * Math.max(0, timeS - 600), 1200);
  expect(calledS).toBeGreaterThan(1060 - 45 + 28 - 8);
  expect(calledS).toBeLessThan(1060 - 45 + 28 + 8);
});

test('a level is judged by its distance alone, whatever it takes', () => {
  expect(watched(() => limitC - 0.5, 2000).outlook.passedOfLate).toBeLessThan(1e-6);
  expect(watched(() => limitC, 2000).outlook.passed).toBeCloseTo(0.5, 6);
  expect(watched(() => limitC + 0.5, 2000).outlook.weakForS).toBeGreaterThan(1800);
});

test('one swing over the limit is mixed away, and a head that was never strong calls for nothing', () => {
  const swing = (timeS: number) => (timeS > 600 && timeS <= 615 ? limitC + 1 : 79);
  expect(watched(swing, 1200).calledS).toBeNull();
  expect(watched(() => limitC + 2, 1200).calledS).toBeNull();
});

test('who was called brings heat back for the tail: nothing is due, and the weak vapour counts anew', () => {
  const { watch } = watched((timeS) => 78.2 + 0.01 * Math.max(0, timeS - 600), 1400);
  expect(watch.outlook().heatOffDue).toBe(true);
  watch.disarm();
  expect(watch.outlook()).toMatchObject({ heatOffDue: false, weakForS: 0 });
});

test('the time to the limit is the way to it by the rate: none at rest or sinking, nought above', () => {
  const rising = (timeS: number) => limitC - 3 + 0.01 * timeS;
  expect(watched(rising, 100).outlook.etaS).toBeCloseTo(200, 6);
  expect(watched(() => limitC - 2, 100).outlook.etaS).toBeNull();
  expect(watched((timeS) => limitC - 1 - 0.01 * timeS, 100).outlook.etaS).toBeNull();
  expect(watched((timeS) => limitC + 0.1 - 0.001 * timeS, 50).outlook.etaS).toBe(0);
});

test('while the vapour has left the bulb nothing is concluded of the limit', () => {
  const { watch, outlook } = watched(() => limitC - 2, 300);
  if (head === null) throw new Error('There is a head.');
  for (let timeS = 301; timeS <= 500; timeS += 1) {
    watch.second({
      head: { ...head, ...headAt(limitC + 5), wet: 1 },
      situation: { ...situation, recededSinceS: 300 },
      belief,
      limitC,
      reactionTimeS: 45,
    });
  }
  expect(watch.outlook()).toEqual(outlook);
});

/** What one second alone leaves, of a head so far below the limit. */
function afterOne(belowK: number, changes: Partial<HeadState> = {}, beliefK = 0) {
  if (head === null) throw new Error('There is a head.');
  const watch = createLimitWatch(limitC);
  const now = { ...head, vapourC: limitC + beliefK - belowK, vapourSdK: 0.12, wet: 1, ...changes };
  const offset = { ...belief, meanK: beliefK, offsetsK: [beliefK] };
  watch.second({ head: now, situation, belief: offset, limitC, reactionTimeS: 45 });
  return watch.outlook();
}

test('one second counts for a fortieth of the cup, as far as it is wet, by the normal distribution', () => {
  // No head is known better than 0.05 K: 0.12 K beside it are 0.13 K.
  const { passed, passedOfLate } = afterOne(0.1, { wet: 0.6 });
  expect(passed).toBeCloseTo(1 - normalCumulative(0.1 / 0.13), 6);
  expect(passedOfLate).toBeCloseTo((0.6 / 40) * passed, 9);
});

test('ahead by the reaction time the head goes by its rate and its doubt, none faster than 0.03 K/s', () => {
  const ahead = (rateKPerS: number, rateSdKPerS: number) =>
    afterOne(1, { rateKPerS, rateSdKPerS }).passedWithinReaction;
  const expected = (restK: number, rateSdKPerS: number) =>
    expect.closeTo((1 - normalCumulative(restK / Math.hypot(0.13, 45 * rateSdKPerS))) / 40, 6);
  expect([ahead(0.01, 0.002), ahead(0.2, 0.002), ahead(-0.2, 0.02), ahead(0.01, 0.5)]).toEqual([
    expected(1 - 0.45, 0.002),
    expected(1 - 1.35, 0.002),
    expected(1 + 1.35, 0.02),
    expected(1 - 0.45, 0.03),
  ]);
});

test('vapour is strong while it is more likely so than not, for as much of a second as it is wet', () => {
  expect([afterOne(0.001, { wet: 0.7 }).strongForS, afterOne(-0.001).strongForS]).toEqual([0.7, 0]);
});

test('a call needs half a minute of strong vapour before', () => {
  const risesAfter = (strongS: number) =>
    watched((timeS) => (timeS <= strongS ? limitC - 1 : limitC + 2), 400).calledS !== null;
  expect([risesAfter(29), risesAfter(30)]).toEqual([false, true]);
});

test('weak vapour is counted from when the cup was all but surely weak, and anew after it was not', () => {
  const weak = (timeS: number) => (timeS > 600 && timeS < 640 ? limitC - 2 : limitC + 2);
  const { weakForS } = watched(weak, 1000).outlook;
  // After 39 s of strong vapour e^(−39/40) of the cup is weak; it takes 40 s · ln(0.62/0.05) to be so all but surely.
  expect(
    Math.abs(weakForS - (1000 - 640 - 40 * Math.log((1 - Math.exp(-39 / 40)) / 0.05))),
  ).toBeLessThan(3);
});

test('a head that stands at the limit has reached it', () => {
  expect(afterOne(0, { rateKPerS: 0 }).etaS).toBe(0);
});

test('the limit lies on the probe by its offset, also before vapour has come', () => {
  expect(afterOne(1, {}, 0.4).limitOnProbeC).toBeCloseTo(limitC + 0.4, 12);
  if (head === null) throw new Error('There is a head.');
  const watch = createLimitWatch(limitC);
  watch.second({
    head,
    situation: { ...situation, bathedS: null },
    belief: { ...belief, meanK: 0.4, offsetsK: [0.4] },
    limitC,
    reactionTimeS: 45,
  });
  expect(watch.outlook()).toEqual({
    limitOnProbeC: limitC + 0.4,
    passed: 0,
    passedOfLate: 0,
    passedWithinReaction: 0,
    etaS: null,
    strongForS: 0,
    weakForS: 0,
    heatOffDue: false,
  });
});
