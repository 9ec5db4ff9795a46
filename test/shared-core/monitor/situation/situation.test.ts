import { expect, test } from 'vitest';
import {
  createSituationWatch,
  type Situation,
} from '../../../../shared-core/monitor/situation/situation.ts';
import type { HeadState } from '../../../../shared-core/monitor/situation/vapour-filter.ts';

const still: HeadState = {
  vapourC: 78.2,
  vapourSdK: 0.04,
  rateKPerS: 0,
  rateSdKPerS: 0.0005,
  bulbC: 78.2,
  bulbRateKPerS: 0,
  wet: 0.99,
};
const noise = { whiteSdK: 0.02, slowSdK: 0.02 };

/** A still that distils for ten minutes, and then does as told, a second at a time. */
function afterDistilling(seconds: readonly Partial<HeadState>[], coldForS = 0): Situation {
  const cold = Array<Partial<HeadState>>(coldForS).fill({ wet: 0.01, bulbC: 20 });
  return after([...cold, ...distilling(600), ...seconds]);
}

/** What is known after such seconds, the first at 0 s. */
function after(seconds: readonly Partial<HeadState>[], isFaulty = (_: number) => false): Situation {
  const watch = createSituationWatch();
  for (const [timeS, head] of seconds.entries()) {
    const now = { ...still, ...head };
    watch.second({
      timeS,
      observedC: now.bulbC,
      head: now,
      noise,
      azeotropeC: 78,
      statedAzeotropeC: 78,
      isFaulty: isFaulty(timeS),
      isHeatOff: false,
    });
  }
  return watch.now();
}

const cooling = (count: number): Partial<HeadState>[] =>
  Array<Partial<HeadState>>(count).fill({ wet: 0.01, bulbC: 60, bulbRateKPerS: -0.05 });
const warming = (count: number): Partial<HeadState>[] =>
  Array.from({ length: count }, (_, second) => ({ wet: 0.01, bulbC: 60 + 0.2 * second }));
const distilling = (count: number): Partial<HeadState>[] =>
  Array<Partial<HeadState>>(count).fill(still);

test('a bulb that is warmed is not left alone, though no vapour bathes it', () => {
  const alone = afterDistilling(cooling(300));
  expect(alone.leftAloneS).toBeGreaterThan(295);
  const heated = afterDistilling([...cooling(200), ...warming(60), ...cooling(40)]);
  expect(heated.absentS).toBeGreaterThan(295);
  expect(heated.leftAloneS).toBeGreaterThanOrEqual(40);
  expect(heated.leftAloneS).toBeLessThan(55);
});

test('a noisy probe warms no bulb, and vapour that goes at once has left nothing alone before it came', () => {
  const jittering = Array.from({ length: 300 }, (_, second) => ({
    wet: 0.01,
    bulbC: 60 + 0.3 * Math.sin(second),
    bulbRateKPerS: 0.3 * Math.cos(second),
  }));
  expect(afterDistilling(jittering).leftAloneS).toBeGreaterThan(290);
  const brief = afterDistilling(cooling(60), 1800);
  expect(brief.leftAloneS).toBeLessThan(65);
});

test('the longest break is one that vapour or warmth has ended', () => {
  expect(afterDistilling(cooling(300)).longestBreakS).toBe(0);
  const back = afterDistilling([...cooling(180), ...distilling(60), ...cooling(90)]);
  expect(back.longestBreakS).toBeGreaterThan(175);
  expect(back.longestBreakS).toBeLessThan(185);
  expect(back.leftAloneS).toBeLessThan(95);
});

const warmingUp = (count: number): Partial<HeadState>[] =>
  Array<Partial<HeadState>>(count).fill({ wet: 0.01, bulbC: 20 });

test('before vapour came nothing is counted', () => {
  expect(after(warmingUp(300))).toMatchObject({
    arrivedS: null,
    bathedS: null,
    heldS: null,
    levelC: null,
    wetS: 0,
    heldWetS: 0,
    calmS: 0,
    absentS: 0,
    departedS: null,
  });
});

test('the head has held since it came to rest, and what it has distilled since then is counted from there', () => {
  const rising = Array.from({ length: 40 }, (_, second) => ({
    rateKPerS: 0.05,
    vapourC: 76.2 + 0.05 * second,
    bulbC: 76.2 + 0.05 * second,
  }));
  const seconds = [...warmingUp(100), ...rising, ...distilling(60)];
  expect(after(seconds.slice(0, 150))).toMatchObject({ bathedS: 100, heldS: null, heldWetS: 0 });
  const held = after(seconds);
  expect(held.heldS).toBeGreaterThanOrEqual(139);
  expect(held.heldS).toBeLessThanOrEqual(141);
  expect(held.heldWetS).toBe(199 - held.heldS!);
  expect(held.wetS).toBeGreaterThanOrEqual(held.heldWetS + 39);
  expect(held.levelC).toBeCloseTo(78.2, 6);
});

test('calm is counted from the rest on, and anew after the vapour went, and while the probe fails', () => {
  const seconds = [...distilling(600), ...cooling(100), ...distilling(60)];
  const { calmS, recededSinceS, wetS } = after(seconds);
  expect(recededSinceS).toBeNull();
  expect(calmS).toBeGreaterThan(50);
  expect(calmS).toBeLessThanOrEqual(60);
  expect(wetS).toBeGreaterThan(650);
  expect(wetS).toBeLessThanOrEqual(661);
  expect(after(distilling(600), (timeS) => timeS >= 560 && timeS < 590).calmS).toBe(10);
});

test('the lowest level is that of a head in vapour, not of a bulb that rests cooler without it', () => {
  const dry = Array<Partial<HeadState>>(1200).fill({ wet: 0.01, bulbC: 75, vapourC: 78.2 });
  const { lowestLevelC, lowestLaterC } = after([...distilling(1200), ...dry]);
  expect(lowestLevelC).toBeCloseTo(78.2, 6);
  expect(lowestLaterC).toBeCloseTo(78.2, 6);
  const stronger = Array<Partial<HeadState>>(1200).fill({ bulbC: 77.6, vapourC: 77.6 });
  expect(after([...distilling(1200), ...stronger]).lowestLaterC).toBeCloseTo(77.6, 6);
});

test('a bulb that rests below what vapour can be shows its level all the same, as long as the head has never held', () => {
  const high = Array<Partial<HeadState>>(120).fill({ wet: 0.3, bulbC: 72, vapourC: 72 });
  expect(after([...warmingUp(100), ...high])).toMatchObject({ heldS: null, lowestLevelC: 72 });
  expect(after([...distilling(1200), ...high]).lowestLevelC).toBeCloseTo(78.2, 6);
});

test('a head that comes back clearly cooler has found a new level; one that comes back to its own goes on from it', () => {
  const backAt = (vapourC: number) =>
    after([
      ...distilling(600),
      ...cooling(100),
      ...Array<Partial<HeadState>>(5).fill({ vapourC, bulbC: vapourC }),
    ]).levelC;
  expect(backAt(77.5)).toBeCloseTo(77.5, 1);
  expect(Math.abs((backAt(78.1) ?? 0) - 78.2)).toBeLessThan(0.101);
});
