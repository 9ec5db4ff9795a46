import type { Stage } from '#shared-core';
import type { ByHandRun } from './by-hand-run.ts';

/** The true course of a run, read off the still and never off the probe. */
export interface ByHandTruth {
  readonly stages: readonly Stage[];
  readonly arrivalS: number | null;
  /** 'marginal': vapour as strong as the limit came, but too little of it to be judged by. */
  readonly main: 'yes' | 'marginal' | 'no';
  readonly mainFromS: number | null;
  /** From here the vapour stays below the limit for good; null when the heat came off before. */
  readonly limitS: number | null;
  /** The same second, but the vapour is as strong as it was for ten minutes and stays so: nothing ends. */
  readonly flat: readonly boolean[];
}

const bathedShare = 0.9;
const calmKPerS = 0.012;
const calmS = 20;
/** With a hand at the flame the head may never be calm: after so much vapour it holds. */
const heldAfterS = 120;
/** Light volatiles still rule while the vapour is colder than the azeotrope by more than this. */
const lightK = 0.3;
const leastMainMl = 1.5;
const leastMainShareOfEthanol = 0.1;
const leastMainS = 480;
const marginalShareOfEthanol = 0.02;
/** The limit lies at the end of the spell in which this share of all strong vapour was reached. */
const mainShare = 0.95;
const weakForS = 60;
/** Nothing ends where the dew point of ten minutes on is less than this above that of now. */
const flatAheadS = 600;
const flatK = 0.25;

export function byHandTruth(run: ByHandRun): ByHandTruth {
  const { course, settings } = run;
  const { bathed, aboveLimitMl, chargedEthanolMl, heatOffS } = course;
  const conventionS =
    settings.firstFraction.kind === 'minutes' ? 60 * settings.firstFraction.minutes : 0;
  const arrival = bathed.findIndex((share) => share >= bathedShare);
  const arrivalS = arrival < 0 ? null : arrival;
  const heldS = arrivalS === null ? null : heldFrom(run, arrivalS);
  const firstEndS = heldS === null ? null : afterBathed(run, heldS, conventionS);
  const at = (timeS: number): number => aboveLimitMl[timeS] as number;
  const strongMl = firstEndS === null ? 0 : at(heatOffS) - at(firstEndS);
  const strongS = firstEndS === null ? 0 : strongSeconds(run, firstEndS);
  const isMain =
    strongMl >= Math.max(leastMainMl, leastMainShareOfEthanol * chargedEthanolMl) &&
    strongS >= leastMainS;
  const isMarginal = strongMl > marginalShareOfEthanol * chargedEthanolMl && strongMl > 0.3;
  const limitS = isMain && firstEndS !== null ? limitFrom(run, firstEndS, strongMl) : null;
  const goneS = bathed.findIndex((share, timeS) => timeS >= heatOffS && share < 0.5);
  const stages = bathed.map((_, timeS): Stage => {
    if (arrivalS === null || timeS < arrivalS) return 'warm-up';
    if (goneS >= 0 && timeS >= goneS) return 'cool-down';
    if (firstEndS === null || timeS < firstEndS) return 'first-fraction';
    return isMain && (limitS === null || timeS < limitS) ? 'main-fraction' : 'tail';
  });
  return {
    stages,
    arrivalS,
    main: isMain ? 'yes' : isMarginal ? 'marginal' : 'no',
    mainFromS: isMain ? firstEndS : null,
    limitS,
    flat: isMain && firstEndS !== null ? flatSeconds(run, firstEndS, limitS ?? heatOffS) : [],
  };
}

function isBathed({ course }: ByHandRun, timeS: number): boolean {
  return (course.bathed[timeS] as number) >= bathedShare;
}

function heldFrom(run: ByHandRun, arrivalS: number): number | null {
  const { vapourC, azeotropeC, heatOffS } = run.course;
  let calm = 0;
  let seen = 0;
  for (let timeS = arrivalS; timeS < heatOffS; timeS += 1) {
    if (!isBathed(run, timeS)) {
      calm = 0;
      continue;
    }
    const now = vapourC[timeS] as number;
    const before = vapourC[Math.max(0, timeS - 5)] as number;
    if (now < azeotropeC - lightK) {
      calm = 0;
      continue;
    }
    seen += 1;
    calm = Math.abs(now - before) / 5 < calmKPerS ? calm + 1 : 0;
    if (calm >= calmS) return timeS - calmS + 1;
    if (seen >= heldAfterS) return timeS;
  }
  return null;
}

function afterBathed(run: ByHandRun, fromS: number, count: number): number | null {
  let seen = 0;
  for (let timeS = fromS; timeS < run.course.heatOffS; timeS += 1) {
    if (isBathed(run, timeS)) seen += 1;
    if (seen > count) return timeS;
  }
  return null;
}

function isStrong({ course, settings }: ByHandRun, timeS: number): boolean {
  return (course.abv[timeS] as number) >= settings.leastStrengthAbv;
}

function strongSeconds(run: ByHandRun, fromS: number): number {
  let seconds = 0;
  for (let timeS = fromS; timeS < run.course.heatOffS; timeS += 1) {
    if (isBathed(run, timeS) && isStrong(run, timeS)) seconds += 1;
  }
  return seconds;
}

function limitFrom(run: ByHandRun, firstEndS: number, strongMl: number): number | null {
  const { aboveLimitMl, heatOffS } = run.course;
  const startMl = aboveLimitMl[firstEndS] as number;
  const mostlyOver = aboveLimitMl.findIndex((ml) => ml - startMl >= mainShare * strongMl);
  let weakSinceS: number | null = null;
  let weakS = 0;
  for (let timeS = mostlyOver; timeS < heatOffS; timeS += 1) {
    if (!isBathed(run, timeS)) continue;
    if (isStrong(run, timeS)) {
      weakSinceS = null;
      weakS = 0;
      continue;
    }
    weakSinceS ??= timeS;
    weakS += 1;
    if (weakS >= weakForS) return weakSinceS;
  }
  return null;
}

function flatSeconds(run: ByHandRun, fromS: number, toS: number): boolean[] {
  const { vapourC } = run.course;
  const flat: boolean[] = new Array(vapourC.length).fill(false);
  for (let timeS = fromS; timeS + flatAheadS < toS; timeS += 1) {
    const ahead = vapourC[timeS + flatAheadS] as number;
    flat[timeS] = ahead - (vapourC[timeS] as number) < flatK && isStrong(run, timeS);
  }
  return flat;
}
