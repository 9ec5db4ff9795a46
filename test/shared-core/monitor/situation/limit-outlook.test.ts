import { expect, test } from 'vitest';
import { createLimitWatch } from '../../../../shared-core/monitor/situation/limit-outlook.ts';
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
