import type { HeadNoise } from '../sense/head-noise.ts';

/** Learns how far a head that holds its level strays from it over minutes: a random walk, beside what the noise explains. */
export interface WanderLearner {
  /** Takes the mean of one block. What comes while the head may be leaving is not taken for wander. */
  see(timeS: number, meanC: number, noise: HeadNoise, mayLeave: boolean): void;
  /** What lies on the two sides of an upset is not compared; what was learned stays. */
  interrupt(): void;
  /** Variance by which the level may be elsewhere after a second [K²/s]. */
  wanderK2PerS(): number;
}

const minuteS = 60;
/** Real heads stray by 0.005 … 0.04 K within minutes (`test/reference/real-traces`): this much in one is believed before any is seen. */
const usualK2PerS = 0.02 ** 2 / minuteS;
/** For so many minutes' worth; and so many are remembered. */
const priorMinutes = 20;
const longestMemory = 30;
/** No head stands stiller than this: a tenth of the usual and a little more [K²/s]. */
const leastK2PerS = 0.003 ** 2 / minuteS;
/** A minute that has just ended may be the first of a departure, which the test has not found yet [s]. */
const learnedAfterS = 120;
/** An upset is clipped at three standard deviations, so that it does not become wander. */
const clippedVariances = 9;

/**
 * The means of two minutes that follow each other differ, by a random walk of variance q a second, with variance `2/3 q T`; a slow scatter
 * of standard deviation s and memory τ adds `2 s² (ρ − κ)`, with `ρ = 2 τ/T (1 − τ/T (1 − e^(−T/τ)))` of one mean and
 * `κ = (τ/T)² (1 − e^(−T/τ))²` that both share; white noise of n readings adds `2 σ²/n`. q is the mean of what is left of the squares, each
 * with the weight of what it can tell: where v of a variance V is noise, the information on the rest is `(1 − v/V)²` of that without noise.
 *
 * Source: integrals of the autocovariances of the three, worked out here.
 */
export function createWanderLearner(): WanderLearner {
  let sum = 0;
  let blocks = 0;
  let beganS = 0;
  let lastMeanC: number | null = null;
  let waiting: { readonly timeS: number; readonly squareK2: number }[] = [];
  let learned = usualK2PerS * priorMinutes;
  let minutes = priorMinutes;

  const learn = (squareK2: number, explainedK2: number): void => {
    const perK2PerS = (2 / 3) * minuteS;
    const usual = explainedK2 + perK2PerS * (learned / minutes);
    const clipped = Math.min(squareK2, clippedVariances * usual);
    const told = (1 - explainedK2 / usual) ** 2;
    learned += (told * (clipped - explainedK2)) / perK2PerS;
    minutes += told;
    if (minutes > longestMemory) {
      learned *= longestMemory / minutes;
      minutes = longestMemory;
    }
    learned = Math.max(learned, leastK2PerS * minutes);
  };

  return {
    see: (timeS, meanC, noise, mayLeave) => {
      if (blocks === 0) beganS = timeS;
      sum += meanC;
      blocks += 1;
      if (timeS - beganS >= minuteS) {
        const mean = sum / blocks;
        if (lastMeanC !== null) waiting.push({ timeS, squareK2: (mean - lastMeanC) ** 2 });
        lastMeanC = mean;
        sum = 0;
        blocks = 0;
      }
      const [oldest] = waiting;
      if (mayLeave || oldest === undefined || timeS - oldest.timeS < learnedAfterS) return;
      waiting = waiting.slice(1);
      learn(oldest.squareK2, explainedByNoiseK2(noise));
    },
    interrupt: () => {
      sum = 0;
      blocks = 0;
      lastMeanC = null;
      waiting = [];
    },
    wanderK2PerS: () => learned / minutes,
  };
}

/** Variance of the difference of two minutes' means by noise alone, with one reading a second. */
function explainedByNoiseK2({ whiteSdK, slowSdK, slowCorrelationS }: HeadNoise): number {
  const share = slowCorrelationS / minuteS;
  const forgotten = -Math.expm1(-1 / share);
  const ofOneMean = 2 * share * (1 - share * forgotten);
  const ofBoth = (share * forgotten) ** 2;
  return 2 * (slowSdK ** 2 * (ofOneMean - ofBoth) + whiteSdK ** 2 / minuteS);
}
