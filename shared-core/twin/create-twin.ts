import { createRandom } from '../random/index.ts';
import type { RunSettings } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type BatchCourse, courseAt, distillateAt } from './batch-course.ts';
import { advanceClock, createClock, setClock } from './course-clock.ts';
import { receiverSdMl } from './instrument-readings.ts';
import type { Observation } from './observations.ts';
import type { Particle } from './particle.ts';
import { assimilate, createCloud, particleCount } from './particle-cloud.ts';
import { guessPrior, type HeatUp } from './still-guess.ts';
import { type Moments, weightedEstimate, weightedMoments } from './weighted-values.ts';

/** What the twin expects, from now on [90 % intervals]. */
export interface TwinOutlook {
  /** Seconds of boiling until the vapour reaches the limit. */
  readonly limitInS: Estimate;
  /** The same if the heat were eased by a quarter. */
  readonly limitInIfEasedS: Estimate;
  readonly distillateMlAtLimit: Estimate;
  readonly collectedMl: Estimate;
  readonly potMl: Estimate;
  readonly potMoleFraction: Estimate;
  readonly flowMlPerS: number;
  readonly bias: Moments;
  /** Mole fraction of the head vapour at which the mean of all distillate falls to the mean asked for; null when none was asked for. */
  readonly stopMoleFraction: number | null;
  /** Share by which reading the receiver now would narrow the range of the end, 0 … 1. */
  readonly volumeWouldNarrow: number;
}

/** An ensemble of stills that could be the one on the bench. */
export interface Twin {
  see(observation: Observation): void;
  /** Holds the ensemble against what was seen since the last time. */
  update(): void;
  outlook(boiledS: number, limitHeightK: number, leastMeanMoleFraction: number | null): TwinOutlook;
}

/**
 * One fixed draw of normal numbers a particle, for what its guess leaves open: the model's own error, how far the run has
 * come and the heat. Fixed, so that the outlook changes with what is seen only.
 */
interface Scatter {
  readonly model: number;
  readonly time: number;
  readonly heat: number;
}

/** Enough beyond any limit for the slope there to be known [K]. */
const beyondLimitK = 2.5;
/** A mean strength falls long after the head has: courses must reach further then [K]. */
const meanHeightK = 14;
/** Scatter of the reduced model's remaining time against that of the dynamic simulator, given the same still. */
export const remainingModelShare = 0.07;
/** Scatter of what comes over in the tail, of which the head says nothing; by simulation. */
const tailModelShare = 0.4;

/**
 * Creates the twin when vapour arrives. It is deterministic: its random numbers come from a fixed seed, so a
 * replay gives the same forecast.
 */
export function createTwin(
  settings: RunSettings,
  heatUp: HeatUp,
  biasSdK: number,
  limitHeightK: number,
): Twin {
  const random = createRandom('twin');
  const observations: Observation[] = [];
  const prior = guessPrior(settings, heatUp, biasSdK);
  let seen = 0;
  const evidence = () => ({
    prior,
    chargeMl: settings.charge.volumeMl,
    untilHeadHeightK: settings.stop.kind === 'strength' ? limitHeightK + beyondLimitK : meanHeightK,
    observations,
  });
  const cloud = createCloud(evidence(), random);
  const scatter = Array.from({ length: particleCount }, () => ({
    model: random.normal(),
    time: random.normal(),
    heat: random.normal(),
  }));

  return {
    see: (observation) => {
      observations.push(observation);
    },
    update: () => {
      if (seen === observations.length) return;
      assimilate(cloud, evidence(), seen, random);
      seen = observations.length;
    },
    outlook: (boiledS, limitHeightK, leastMean) => ({
      ...lookAhead(cloud, scatter, boiledS, limitHeightK),
      stopMoleFraction: leastMean === null ? null : meanStop(cloud, leastMean),
    }),
  };
}

function lookAhead(
  cloud: readonly Particle[],
  scatter: readonly Scatter[],
  boiledS: number,
  limitHeightK: number,
): Omit<TwinOutlook, 'stopMoleFraction'> {
  const weights = cloud.map(({ weight }) => weight);
  const progress = cloud.map((particle, index) =>
    progressOf(particle, scatter[index] as Scatter, boiledS),
  );
  const at = progress.map(({ courseS }) => courseS);
  const heat = progress.map((item) => item.heat);
  const limitAt = cloud.map(({ course }) => limitCourseS(course, limitHeightK));
  const remaining = cloud.map((_, index) => {
    const left = Math.max(0, (limitAt[index] as number) - (at[index] as number));
    const { model } = scatter[index] as Scatter;
    return (left / (heat[index] as number)) * Math.exp(remainingModelShare * model);
  });
  const read = (
    values: (course: BatchCourse) => Float64Array,
    times: readonly number[],
  ): number[] =>
    cloud.map(({ course }, index) => courseAt(course, values(course), times[index] as number));
  const distillate = (times: readonly number[]): number[] =>
    cloud.map(({ course }, index) => distillateAt(course, times[index] as number));
  const collected = distillate(at);
  const soon = distillate(at.map((timeS, index) => timeS + 30 * (heat[index] as number)));
  const eased = remaining.map((timeS, index) => timeS / easedFlow(cloud[index] as Particle));
  const estimate = (values: readonly number[]): Estimate => weightedEstimate(values, weights);
  return {
    limitInS: estimate(remaining),
    limitInIfEasedS: estimate(eased),
    distillateMlAtLimit: estimate(
      distillate(limitAt.map((timeS, index) => Math.max(timeS, at[index] as number))),
    ),
    collectedMl: estimate(collected),
    potMl: estimate(
      cloud.map(({ course }, index) =>
        potAt(
          course,
          at[index] as number,
          Math.exp(tailModelShare * (scatter[index] as Scatter).model),
        ),
      ),
    ),
    potMoleFraction: estimate(
      read((course) => course.potMoleFraction, at).map((x) => Math.max(0, x)),
    ),
    flowMlPerS:
      (weightedMoments(soon, weights).mean - weightedMoments(collected, weights).mean) / 30,
    bias: weightedMoments(
      cloud.map(({ guess }) => guess.biasK),
      weights,
    ),
    volumeWouldNarrow: narrowing(remaining, collected, weights),
  };
}

/** One draw of how far a guess's run has come and of its heat now, out of what its clock leaves open. */
function progressOf(
  { oldClock }: Particle,
  { time, heat }: Scatter,
  boiledS: number,
): { readonly courseS: number; readonly heat: number } {
  const clock = createClock();
  setClock(clock, oldClock);
  advanceClock(clock, boiledS);
  const timeSd = Math.sqrt(clock.timeVariance);
  const shared = clock.covariance / timeSd;
  const ownSd = Math.sqrt(Math.max(0, clock.heatVariance - shared * shared));
  return {
    courseS: Math.max(0, clock.courseS + timeSd * time),
    heat: clock.heat * Math.exp(shared * time + ownSd * heat),
  };
}

/** What is left in the pot [mL]; beyond the course's end, what the tail has taken is only known so well. */
function potAt(course: BatchCourse, boiledS: number, tailFactor: number): number {
  const last = course.count - 1;
  const endS = last * course.stepS;
  if (boiledS <= endS) return courseAt(course, course.potMl, boiledS);
  const tailMl = distillateAt(course, boiledS) - (course.distillateMl[last] as number);
  return Math.max(0, (course.potMl[last] as number) - tailFactor * tailMl);
}

/** Course time at which the head crosses the limit for good. */
function limitCourseS(course: BatchCourse, limitHeightK: number): number {
  const { headHeightK, stepS, count } = course;
  for (let index = count - 1; index > 0; index -= 1) {
    const before = headHeightK[index - 1] as number;
    if (before >= limitHeightK) continue;
    const after = headHeightK[index] as number;
    const share = after > before ? Math.min(1, (limitHeightK - before) / (after - before)) : 1;
    return stepS * (index - 1 + share);
  }
  return 0;
}

/** Head vapour at which stopping leaves all distillate so far at the mean asked for: the cloud's median. */
function meanStop(cloud: readonly Particle[], leastMean: number): number {
  const stops = cloud.map(({ course }) => {
    const { headMoleFraction, distillateMl, count } = course;
    let volume = 0;
    let sum = 0;
    for (let index = 1; index < count; index += 1) {
      const flow = (distillateMl[index] as number) - (distillateMl[index - 1] as number);
      const head = headMoleFraction[index] as number;
      volume += flow;
      sum += flow * head;
      if (sum < leastMean * volume && index > 2) return head;
    }
    return headMoleFraction[count - 1] as number;
  });
  return weightedEstimate(
    stops,
    cloud.map(({ weight }) => weight),
  ).value;
}

/** Flow left when the heat is eased by a quarter while the column's loss stays. */
function easedFlow({ guess }: Particle): number {
  const loss = (guess.refluxRatio * guess.lossShare) / (1 + guess.refluxRatio);
  return Math.max(0.1, (0.75 - loss) / (1 - loss));
}

/** How much of the spread of the end goes with the spread of the volume collected. */
function narrowing(
  remaining: readonly number[],
  collected: readonly number[],
  weights: readonly number[],
): number {
  const end = weightedMoments(remaining, weights);
  const volume = weightedMoments(collected, weights);
  if (end.sd === 0 || volume.sd === 0) return 0;
  const products = remaining.map(
    (value, index) => (value - end.mean) * ((collected[index] as number) - volume.mean),
  );
  const correlation = weightedMoments(products, weights).mean / (end.sd * volume.sd);
  const told = volume.sd ** 2 / (volume.sd ** 2 + receiverSdMl ** 2);
  return 1 - Math.sqrt(Math.max(0, 1 - correlation ** 2 * told));
}
