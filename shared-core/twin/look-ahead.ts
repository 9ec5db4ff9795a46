import type { Random } from '../random/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type BatchCourse, courseAt, distillateAt } from './batch-course.ts';
import { advanceClock, type CourseClock, createClock, setClock } from './course-clock.ts';
import { receiverSdMl } from './instrument-readings.ts';
import type { Particle } from './particle.ts';
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
  /** Height above the azeotrope that the probe should show when {@link headAheadS} more of boiling have passed [K]. */
  readonly headSoonK: Moments;
  /** Mole fraction of the head vapour at which the mean of all distillate falls to the mean asked for; null when none was asked for. */
  readonly stopMoleFraction: number | null;
  /** Share by which reading the receiver now would narrow the range of the end, 0 … 1. */
  readonly volumeWouldNarrow: number;
}

/**
 * One fixed draw of normal numbers a particle, for what its guess leaves open: the model's own error, how far the run has
 * come and the heat. Fixed, so that the outlook changes with what is seen only.
 */
export interface Scatter {
  readonly model: number;
  readonly time: number;
  readonly heat: number;
}

export function drawScatter(count: number, random: Random): Scatter[] {
  return Array.from({ length: count }, () => ({
    model: random.normal(),
    time: random.normal(),
    heat: random.normal(),
  }));
}

/** Scatter of the reduced model's remaining time against that of the dynamic simulator, given the same still. */
export const remainingModelShare = 0.07;
/** Scatter of what comes over in the tail, of which the head says nothing; by simulation. */
const tailModelShare = 0.4;

/** How far ahead the flow is read [s]. */
const flowOverS = 30;
/** How far ahead the head is: to the next look [s]. */
export const headAheadS = 60;

/** What the cloud expects from a time of boiling on [s], up to a height of the limit above the azeotrope [K]. */
export function lookAhead(
  cloud: readonly Particle[],
  scatter: readonly Scatter[],
  boiledS: number,
  limitHeightK: number,
): Omit<TwinOutlook, 'stopMoleFraction'> {
  const each = expectEach(cloud, scatter, boiledS, limitHeightK);
  const { weights } = each;
  const soonMl = weightedMoments(each.soonMl, weights).mean;
  return {
    limitInS: weightedEstimate(each.limitInS, weights),
    limitInIfEasedS: weightedEstimate(each.limitInIfEasedS, weights),
    distillateMlAtLimit: weightedEstimate(each.distillateMlAtLimit, weights),
    collectedMl: weightedEstimate(each.collectedMl, weights),
    potMl: weightedEstimate(each.potMl, weights),
    potMoleFraction: weightedEstimate(each.potMoleFraction, weights),
    flowMlPerS: (soonMl - weightedMoments(each.collectedMl, weights).mean) / flowOverS,
    bias: weightedMoments(each.biasK, weights),
    headSoonK: weightedMoments(each.headSoonK, weights),
    volumeWouldNarrow: narrowing(each.limitInS, each.collectedMl, weights),
  };
}

/** What each guess expects, in the order of the cloud. */
function expectEach(
  cloud: readonly Particle[],
  scatter: readonly Scatter[],
  boiledS: number,
  limitHeightK: number,
) {
  const each = emptyExpectations(cloud.length);
  const clock = createClock();
  for (let index = 0; index < cloud.length; index += 1) {
    const particle = cloud[index] as Particle;
    const { course } = particle;
    const drawn = scatter[index] as Scatter;
    setClock(clock, particle.oldClock);
    advanceClock(clock, boiledS);
    const { courseS, heat } = progressOf(clock, drawn);
    const limitS = limitCourseS(course, limitHeightK);
    const left = Math.max(0, limitS - courseS);
    const limitInS = (left / heat) * Math.exp(remainingModelShare * drawn.model);
    const tailFactor = Math.exp(tailModelShare * drawn.model);
    each.weights[index] = particle.weight;
    each.biasK[index] = particle.guess.biasK;
    each.headSoonK[index] =
      courseAt(course, course.headHeightK, courseS + headAheadS * heat) + particle.guess.biasK;
    each.limitInS[index] = limitInS;
    each.limitInIfEasedS[index] = limitInS / easedFlow(particle);
    each.distillateMlAtLimit[index] = distillateAt(course, Math.max(limitS, courseS));
    each.collectedMl[index] = distillateAt(course, courseS);
    each.soonMl[index] = distillateAt(course, courseS + flowOverS * heat);
    each.potMl[index] = potAt(course, courseS, tailFactor);
    each.potMoleFraction[index] = Math.max(0, courseAt(course, course.potMoleFraction, courseS));
  }
  return each;
}

function emptyExpectations(count: number) {
  return {
    weights: new Float64Array(count),
    biasK: new Float64Array(count),
    headSoonK: new Float64Array(count),
    limitInS: new Float64Array(count),
    limitInIfEasedS: new Float64Array(count),
    distillateMlAtLimit: new Float64Array(count),
    collectedMl: new Float64Array(count),
    soonMl: new Float64Array(count),
    potMl: new Float64Array(count),
    potMoleFraction: new Float64Array(count),
  };
}

/** One draw of how far a guess's run has come and of its heat now, out of what its clock leaves open. */
function progressOf(
  clock: CourseClock,
  { time, heat }: Scatter,
): { readonly courseS: number; readonly heat: number } {
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

/** Flow left when the heat is eased by a quarter while the column's loss stays. */
function easedFlow({ guess }: Particle): number {
  const loss = (guess.refluxRatio * guess.lossShare) / (1 + guess.refluxRatio);
  return Math.max(0.1, (0.75 - loss) / (1 - loss));
}

/** Shorter than this nothing is left, as far as ranges are told [s]. */
const leastLeftS = 10;

/** How much of the spread of the end goes with the spread of the volume collected: by ratios, as the range is wide in proportion and far ends would outweigh all else. */
function narrowing(
  remaining: Float64Array,
  collected: Float64Array,
  weights: Float64Array,
): number {
  const logs = remaining.map((leftS) => Math.log(Math.max(leastLeftS, leftS)));
  const end = weightedMoments(logs, weights);
  const volume = weightedMoments(collected, weights);
  if (end.sd === 0 || volume.sd === 0) return 0;
  const products = logs.map(
    (value, index) => (value - end.mean) * ((collected[index] as number) - volume.mean),
  );
  const correlation = weightedMoments(products, weights).mean / (end.sd * volume.sd);
  const told = volume.sd ** 2 / (volume.sd ** 2 + receiverSdMl ** 2);
  return 1 - Math.sqrt(Math.max(0, 1 - correlation ** 2 * told));
}
