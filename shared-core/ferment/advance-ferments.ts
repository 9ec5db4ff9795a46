import type { Random } from '../random/index.ts';
import { ferments, type PossibleFerments, vigourHours, vigourSpread } from './possible-ferments.ts';

/** Longest step [h]: a tenth of the fastest ferment's day. */
const longestStepH = 2;
/** Chance an hour that a ferment begins to fade: one in five does within a week; common practice, no source. */
const fadingPerH = 0.0012;
/** Chance an hour that one that stands goes on by itself: a ferment of honey did after nine days. */
const recoveryPerH = 0.001;
/** Speed grows by this for each kelvin: it doubles in some ten; common practice, no source. */
const speedPerK = 0.07;
/** Least vigour of one that has faded (logarithm): next to nothing. */
const standingStill = -7;

/** Gravity left above the end at which a ferment counts as done. */
export const doneWithin = 0.002;

/** Speed at which what is left goes [1/h]. */
export function speedPerH(
  cloud: PossibleFerments,
  index: number,
  timeH: number,
  warmthK: number,
): number {
  const range = (cloud.original[index] as number) - (cloud.end[index] as number);
  const left = Math.max(1e-3, 1 - (cloud.lost[index] as number) / range);
  const lag = cloud.lagH[index] as number;
  const going = 1 / (1 + Math.exp(-(timeH - lag) / (0.22 * lag)));
  const log =
    (cloud.vigour[index] as number) +
    (cloud.fading[index] as number) -
    (cloud.logHours[index] as number) +
    ((cloud.power[index] as number) - 1) * Math.log(left) +
    speedPerK * warmthK;
  return going * Math.exp(log);
}

/** Gravity lost in an hour. */
export function gravityPerH(
  cloud: PossibleFerments,
  index: number,
  timeH: number,
  warmthK: number,
): number {
  const range = (cloud.original[index] as number) - (cloud.end[index] as number);
  return (
    speedPerH(cloud, index, timeH, warmthK) * Math.max(0, range - (cloud.lost[index] as number))
  );
}

/** A step of time, at most {@link longestStepH} long where the course is followed, with what it does to each vigour alike. */
interface TimeStep {
  readonly stepH: number;
  /** How much of a vigour is kept, and how far it wanders. */
  readonly keep: number;
  readonly wander: number;
}

function timeStep(stepH: number): TimeStep {
  const keep = Math.exp(-stepH / vigourHours);
  return { stepH, keep, wander: vigourSpread * Math.sqrt(1 - keep * keep) };
}

/** Lets one possible ferment go on by a step. */
function stepOne(
  cloud: PossibleFerments,
  index: number,
  timeH: number,
  { stepH, keep, wander }: TimeStep,
  warmthK: number,
  random: Random,
): void {
  cloud.vigour[index] = (cloud.vigour[index] as number) * keep + wander * random.normal();
  const fading = cloud.fading[index] as number;
  if (fading < 0) {
    const fades = fading - stepH / (cloud.fadeHours[index] as number);
    cloud.fading[index] =
      random.uniform() < recoveryPerH * stepH ? 0 : Math.max(standingStill, fades);
  }
  const range = (cloud.original[index] as number) - (cloud.end[index] as number);
  const left = range - (cloud.lost[index] as number);
  const speed = speedPerH(cloud, index, timeH + stepH / 2, warmthK);
  const after = left * Math.exp(-speed * stepH);
  cloud.lost[index] = range - after;
  if (after <= doneWithin && Number.isNaN(cloud.doneH[index] as number)) {
    const share = left > after ? (left - doneWithin) / (left - after) : 0;
    cloud.doneH[index] = timeH + stepH * Math.min(1, Math.max(0, share));
  }
}

/** Lets all possible ferments go on from one time to another [h], keeping what was lost at every half day. */
export function advanceFerments(
  cloud: PossibleFerments,
  fromH: number,
  toH: number,
  warmthK: number,
  random: Random,
): void {
  let timeH = fromH;
  while (timeH < toH - 1e-9) {
    const halfDayH = 12 * (Math.floor(timeH / 12 + 1e-9) + 1);
    const step = timeStep(Math.min(longestStepH, toH - timeH, halfDayH - timeH));
    // Drawn for the next that begins to fade, not for each that does not.
    const toNext = () => Math.ceil(random.exponential() / -Math.log1p(-fadingPerH * step.stepH));
    let fadesIn = toNext();
    for (let index = 0; index < ferments; index += 1) {
      fadesIn -= 1;
      if (fadesIn <= 0) {
        if (cloud.fading[index] === 0) cloud.fading[index] = -1e-6;
        fadesIn = toNext();
      }
      stepOne(cloud, index, timeH, step, warmthK, random);
    }
    timeH += step.stepH;
    if (halfDayH - timeH < 1e-6) keepHalfDay(cloud);
  }
}

function keepHalfDay({ lost, lostBefore }: PossibleFerments): void {
  for (let age = lostBefore.length - 1; age > 0; age -= 1) {
    lostBefore[age]?.set(lostBefore[age - 1] as Float64Array);
  }
  lostBefore[0]?.set(lost);
}

/** When one possible ferment is done, if it does not fade [h]; no later than `latestH`. */
export function forecastDoneH(
  cloud: PossibleFerments,
  index: number,
  fromH: number,
  latestH: number,
  warmthK: number,
  random: Random,
): number {
  let timeH = fromH;
  let stepH = longestStepH;
  while (Number.isNaN(cloud.doneH[index] as number) && timeH < latestH) {
    stepOne(cloud, index, timeH, timeStep(stepH), warmthK, random);
    timeH += stepH;
    stepH = Math.min(12, stepH * 1.02);
  }
  const done = cloud.doneH[index] as number;
  return Number.isNaN(done) ? latestH : done;
}
