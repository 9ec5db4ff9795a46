import { type Random, systematicPicks } from '../random/index.ts';
import { beginCourse, copyCourse, emptyCourse, runTo } from './batch-course.ts';
import { createClock, setClock } from './course-clock.ts';
import { startOf } from './course-start.ts';
import { isBelow, logLikelihood, mostFrom } from './observations.ts';
import type { CloudEvidence, Particle } from './particle.ts';
import { type GuessPrior, logPrior, toGuess, type Walk } from './still-guess.ts';

const sweeps = 3;
/** Scale of differential-evolution steps in seven dimensions, 2.38/√(2 d). */
const stepScale = 0.6;

/** A cloud on its way from a resampling: values alone. */
export interface ResampleMove {
  /** Where the particles were before they were drawn anew: steps are taken along the differences of two. */
  readonly walks: readonly Walk[];
  /** Share of the new log-likelihood that counts. */
  readonly power: number;
  /** Moves made of all that are to be made. */
  moved: number;
}

/**
 * Resample-move: draws the cloud anew in proportion to the weights (systematic resampling), then lets every
 * particle walk by Metropolis steps whose direction is the difference of two others, so that steps follow the
 * ridges along which parameters trade off. Here it is drawn; {@link moveOn} lets it walk.
 *
 * Source: W. R. Gilks, C. Berzuini, J. R. Stat. Soc. B 63 (2001) 127; C. J. F. ter Braak, Stat. Comput. 16 (2006) 239;
 * from memory.
 */
export function drawAnew(cloud: readonly Particle[], power: number, random: Random): ResampleMove {
  const walks = cloud.map(({ walk }) => walk);
  resample(cloud, random);
  return { walks, power, moved: 0 };
}

export function isMoved(cloud: readonly Particle[], { moved }: ResampleMove): boolean {
  return moved >= sweeps * cloud.length;
}

/** Makes the next moves, so many at most; answers how many it made. */
export function moveOn(
  cloud: readonly Particle[],
  evidence: CloudEvidence,
  observed: { readonly from: number; readonly to: number },
  under: ResampleMove,
  most: number,
  random: Random,
): number {
  const before = under.moved;
  const until = Math.min(sweeps * cloud.length, before + most);
  const move = createMove(evidence, observed, under.power);
  for (; under.moved < until; under.moved += 1) {
    const particle = cloud[under.moved % cloud.length] as Particle;
    const walk = proposeWalk(particle, under.walks, evidence.prior, random);
    move(particle, walk, Math.log(Math.max(1e-300, random.uniform())));
  }
  return until - before;
}

function proposeWalk(
  particle: Particle,
  walks: readonly Walk[],
  prior: GuessPrior,
  random: Random,
): Walk {
  const a = walks[random.integer(0, walks.length - 1)] as Walk;
  const b = walks[random.integer(0, walks.length - 1)] as Walk;
  const scale = random.uniform() < 0.1 ? 1 : stepScale;
  const walk: number[] = [];
  for (let index = 0; index < particle.walk.length; index += 1) {
    walk.push(
      (particle.walk[index] as number) +
        scale * ((a[index] as number) - (b[index] as number)) +
        0.02 * (prior.sd[index] as number) * random.normal(),
    );
  }
  return walk;
}

/**
 * Metropolis' rule: a particle goes where it is proposed to if that gains more than the logarithm drawn. Five proposals in six are
 * turned down, and most of them show early that they will be: their course is run, and held against what was seen, only until then.
 */
function createMove(
  { prior, chargeMl, untilHeadHeightK, observations }: CloudEvidence,
  { from, to }: { readonly from: number; readonly to: number },
  power: number,
) {
  const most = mostFrom(observations);
  const oldClock = createClock();
  const newClock = createClock();
  let free = emptyCourse();

  return (particle: Particle, walk: Walk, drawn: number): void => {
    const { oldLogLikelihood, newLogLikelihood } = particle;
    const priorThere = logPrior(prior, walk);
    const priorHere = logPrior(prior, particle.walk);
    const needed = drawn + oldLogLikelihood + power * newLogLikelihood - priorThere + priorHere;
    const ofPast = { least: needed - power * (most[from] as number), mostFrom: most };
    if (isBelow(ofPast, 0, 0, from)) return;
    const guess = toGuess(walk);
    const run = beginCourse(guess, chargeMl, untilHeadHeightK, free);
    setClock(oldClock, createClock(startOf(guess, prior)));
    const past = logLikelihood(observations, 0, from, guess, free, oldClock, {
      run,
      bound: ofPast,
    });
    if (past === Number.NEGATIVE_INFINITY) return;
    setClock(newClock, oldClock);
    const ofNow = { least: (needed - past) / power, mostFrom: most };
    const now = logLikelihood(observations, from, to, guess, free, newClock, {
      run,
      bound: ofNow,
    });
    const gain =
      past + power * now - oldLogLikelihood - power * newLogLikelihood + priorThere - priorHere;
    if (drawn >= gain) return;
    runTo(run, Number.POSITIVE_INFINITY);
    const replaced = particle.course;
    particle.walk = walk;
    particle.guess = guess;
    particle.oldLogLikelihood = past;
    particle.newLogLikelihood = now;
    particle.course = free;
    setClock(particle.oldClock, oldClock);
    setClock(particle.newClock, newClock);
    free = replaced;
  };
}

/**
 * Every particle that is drawn stays, once; those that are not become copies of those drawn more often. Copying a course
 * is far cheaper than running it again.
 */
function resample(cloud: readonly Particle[], random: Random): void {
  const copies = new Uint32Array(cloud.length);
  const weights = cloud.map(({ weight }) => weight);
  for (const pick of systematicPicks(weights, random)) copies[pick] = (copies[pick] as number) + 1;
  let target = 0;
  cloud.forEach((source, index) => {
    for (let copy = 1; copy < (copies[index] as number); copy += 1) {
      while (copies[target] !== 0) target += 1;
      becomeCopy(cloud[target] as Particle, source);
      target += 1;
    }
  });
  for (const particle of cloud) particle.weight = 1 / cloud.length;
}

function becomeCopy(particle: Particle, source: Particle): void {
  particle.walk = source.walk;
  particle.guess = source.guess;
  particle.oldLogLikelihood = source.oldLogLikelihood;
  particle.newLogLikelihood = source.newLogLikelihood;
  copyCourse(source.course, particle.course);
  setClock(particle.oldClock, source.oldClock);
  setClock(particle.newClock, source.newClock);
}
