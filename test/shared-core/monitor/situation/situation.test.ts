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
const noise = { whiteSdK: 0.02, slowSdK: 0.02, slowCorrelationS: 10 };

/** A still that distils for ten minutes, and then does as told, a second at a time. */
function afterDistilling(seconds: readonly Partial<HeadState>[], coldForS = 0): Situation {
  const watch = createSituationWatch();
  const cold = Array<Partial<HeadState>>(coldForS).fill({ wet: 0.01, bulbC: 20 });
  const all = [...cold, ...distilling(600), ...seconds];
  for (const [timeS, head] of all.entries()) {
    const now = { ...still, ...head };
    watch.second({
      timeS,
      observedC: now.bulbC,
      head: now,
      noise,
      azeotropeC: 78,
      statedAzeotropeC: 78,
      isFaulty: false,
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
