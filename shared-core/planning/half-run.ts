import { azeotrope, azeotropeSlopeKPerKPa, limitTemperatureC } from '../equilibrium/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import type { Random } from '../random/index.ts';
import type { RunSettings } from '../run/index.ts';
import {
  type BatchCourse,
  courseAt,
  distillateAt,
  drawWalk,
  emptyCourse,
  guessPrior,
  type HeatUp,
  headModelErrsForS,
  headModelSdK,
  heatWalkPerS,
  heightModelSdK,
  type Observation,
  potOffset,
  potReading,
  potSdK,
  receiverEveryS,
  receiverSdMl,
  remainingModelShare,
  runCourse,
  type StillGuess,
  statedHeatLogSd,
  statedHeatW,
  toGuess,
} from '../twin/index.ts';

/** What is known of a bench before a run, as the forecast needs it. */
export interface Bench {
  readonly settings: RunSettings;
  /** The limit above the azeotrope [K], and what head and pressure may be off together [K]. */
  readonly limitHeightK: number;
  readonly offsetSdK: number;
  /** Of it, what the air pressure leaves open [K]. */
  readonly pressureSdK: number;
}

/** One still that could be the one on the bench, watched until half of its main fraction has come over. */
export interface HalfRun {
  /** Boiling since vapour came [s], and what was left of it until the limit [s]. */
  readonly boiledS: number;
  readonly leftS: number;
  readonly head: readonly Observation[];
  readonly receiver: readonly Observation[];
  readonly pot: readonly Observation[];
  /** What a person would state of the heat [W]. */
  readonly statedHeatW: number;
}

/** Heating up takes so long where nothing is known; common practice, no source [s]. */
export const usualHeatUp: HeatUp = { tookS: 1200, eased: null };
/** A shorter main fraction is over before anything is forecast of it [s]. */
const leastMainS = 900;
const minuteS = 60;
/** The head is looked at once it has settled [s], and is then known to so much from one minute to the next [K]; by simulation. */
const settledS = 180;
const headSdK = 0.1;
const beyondLimitK = 2.5;
const longestS = 6 * 3600;

/**
 * What the forecast starts from on a bench: the limit's height above the azeotrope, and what head, pressure and the model may be off
 * together, `u² = u_probe² + (dT/dp u_p)² + u_model²`.
 *
 * @param settings air pressure [kPa] 60 … 110, probe [K] and limit [% vol] as they stand in Prepare
 * @returns settings with heights and offsets [K]
 *
 * Source: the law of propagation of uncertainty, JCGM 100:2008, eq. 10.
 * @example
 * const pressure = { ...defaultRunSettings.pressure, pressureKPa: 101.325, standardUncertaintyKPa: 0.3 };
 * benchOf({ ...defaultRunSettings, pressure }).limitHeightK // ≈ 5.2 ± 0.3
 */
export function benchOf(settings: RunSettings): Bench {
  const { pressureKPa } = settings.pressure;
  const { leastStrengthAbv } = settings;
  const { temperatureUncertaintyK, pressureUncertaintyKPa } = scaleDoubts(settings);
  const azeotropeC = azeotrope(pressureKPa).temperatureC;
  const pressureSdK = azeotropeSlopeKPerKPa(pressureKPa) * pressureUncertaintyKPa;
  return {
    settings,
    limitHeightK: limitTemperatureC({ leastStrengthAbv, pressureKPa }) - azeotropeC,
    offsetSdK: Math.hypot(temperatureUncertaintyK, pressureSdK, heightModelSdK),
    pressureSdK,
  };
}

/**
 * Draws a still from what is believed of such stills, and what is read of it: the course of the reduced column, `h dx/dt = V Δy + L Δx`
 * on each plate, at a heat that walks at random and under a head that errs as the twin believes of itself.
 *
 * @param bench a limit of 1 … 25 K above the azeotrope
 * @param random chance, moved on by what is drawn
 * @returns readings up to half of the main fraction [s, K, mL]; null where it gives no main fraction worth a forecast
 *
 * Source: preposterior analysis as in `instrumentGains`; the course by `runCourse`.
 * @example
 * drawHalfRun(benchOf(defaultRunSettings), createRandom('a still'))?.head.length !== 0 // => true
 */
export function drawHalfRun(bench: Bench, random: Random): HalfRun | null {
  const { settings, limitHeightK, offsetSdK } = bench;
  const guess = toGuess(drawWalk(guessPrior(settings, usualHeatUp, offsetSdK), random));
  const course = emptyCourse();
  runCourse(guess, settings.charge.volumeMl, limitHeightK + beyondLimitK, course);
  const past = course.headHeightK.subarray(0, course.count);
  const endS = course.stepS * past.findIndex((heightK) => heightK >= limitHeightK);
  if (endS < leastMainS) return null;
  return {
    ...readUntilHalf({ bench, guess, course, endS }, random),
    statedHeatW: statedBy(guess, random),
  };
}

function statedBy({ vapourMolPerS }: StillGuess, random: Random): number {
  return statedHeatW(vapourMolPerS * Math.exp(statedHeatLogSd * random.normal()));
}

interface DrawnStill {
  readonly bench: Bench;
  readonly guess: StillGuess;
  readonly course: BatchCourse;
  readonly endS: number;
}

/** The heat walks and the head lies off the course as the twin believes of itself, so the way to the limit is longer or shorter than the course. */
function readUntilHalf(
  { bench, guess, course, endS }: DrawnStill,
  random: Random,
): Omit<HalfRun, 'statedHeatW'> {
  const head: Observation[] = [];
  const receiver: Observation[] = [];
  const pot: Observation[] = [];
  const { offsetShare, openSdK } = potOffset(bench);
  const potOffK = offsetShare * guess.biasK + openSdK * random.normal();
  let courseS = 0;
  let logHeat = 0;
  let modelOffK = 0;
  let halfS: number | null = null;
  let boiledS = 0;
  while (courseS < endS && boiledS < longestS) {
    boiledS += minuteS;
    logHeat += Math.sqrt(heatWalkPerS * minuteS) * random.normal();
    courseS += minuteS * Math.exp(logHeat);
    if ((boiledS - settledS) % headModelErrsForS === 0) modelOffK = headModelSdK * random.normal();
    if (courseS > endS / 2) halfS ??= boiledS;
    if (halfS !== null || boiledS < settledS) continue;
    const read = (values: Float64Array, sd: number): number =>
      courseAt(course, values, courseS) + sd * random.normal();
    const heightK = read(course.headHeightK, headSdK) + guess.biasK + modelOffK;
    head.push({ kind: 'head', boiledS, value: heightK, sd: headSdK });
    pot.push(potReading(boiledS, read(course.potHeightK, potSdK) + potOffK, bench));
    if (boiledS % receiverEveryS === 0) {
      const value = distillateAt(course, courseS) + receiverSdMl * random.normal();
      receiver.push({ kind: 'volume', boiledS, value, sd: receiverSdMl });
    }
  }
  const isHalfS = halfS ?? boiledS;
  const leftS = (boiledS - isHalfS) * Math.exp(remainingModelShare * random.normal());
  return { boiledS: isHalfS, leftS, head, receiver, pot };
}
