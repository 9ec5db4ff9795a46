import type { Stage } from '#shared-core';
import type { ScoredRun, TrueSecond } from './scored-run.ts';

/** The true course of a run, read off the simulated still and never off the probe. */
export interface Truth {
  /** True stage of each second. */
  readonly stages: readonly Stage[];
  readonly arrivalS: number | null;
  /** From here the main fraction; null when the vapour never stays stronger than the limit. */
  readonly mainFromS: number | null;
  /** From here the vapour is weaker than the limit for a minute in a row, with the heat still on. */
  readonly limitS: number | null;
}

const bathed = 0.9;
const calmRateKPerS = 0.012;
const calmS = 20;
const weakForS = 60;
/** Vapour must stay stronger than the limit for so long to be called a main fraction. */
const leastMainS = 120;

export function readTruth(run: ScoredRun): Truth {
  const { samples, settings } = run;
  const { leastStrengthAbv, firstFraction } = settings;
  const conventionS = firstFraction.kind === 'minutes' ? 60 * firstFraction.minutes : 0;
  const arrivalS = samples.find(({ bathedFraction }) => bathedFraction >= bathed)?.timeS ?? null;
  const heldS = arrivalS === null ? null : heldFrom(samples, arrivalS);
  const firstEndS = heldS === null ? null : afterBathedSeconds(samples, heldS, conventionS);
  const weakS = firstEndS === null ? null : weakFrom(run, firstEndS, leastStrengthAbv);
  const hasMain = firstEndS !== null && (weakS === null || weakS - firstEndS >= leastMainS);
  const limitS = hasMain ? weakS : null;
  const goneS = vapourGoneS(run);
  const stages = samples.map(({ timeS }): Stage => {
    if (arrivalS === null || timeS < arrivalS) return 'warm-up';
    if (timeS >= goneS) return 'cool-down';
    if (firstEndS === null || timeS < firstEndS) return 'first-fraction';
    return hasMain && (limitS === null || timeS < limitS) ? 'main-fraction' : 'tail';
  });
  return { stages, arrivalS, mainFromS: hasMain ? firstEndS : null, limitS };
}

function heldFrom(samples: readonly TrueSecond[], arrivalS: number): number | null {
  let sinceS = arrivalS;
  for (let timeS = arrivalS + 5; timeS < samples.length; timeS += 1) {
    const now = samples[timeS] as TrueSecond;
    const before = samples[timeS - 5] as TrueSecond;
    const rate = (now.bulbTemperatureC - before.bulbTemperatureC) / 5;
    if (now.bathedFraction < bathed || Math.abs(rate) > calmRateKPerS) sinceS = timeS;
    if (timeS - sinceS >= calmS) return sinceS;
  }
  return null;
}

function afterBathedSeconds(
  samples: readonly TrueSecond[],
  fromS: number,
  count: number,
): number | null {
  let seen = 0;
  for (let timeS = fromS; timeS < samples.length; timeS += 1) {
    if ((samples[timeS] as TrueSecond).bathedFraction >= bathed) seen += 1;
    if (seen > count) return timeS;
  }
  return null;
}

function weakFrom(
  { samples, heatOffS }: ScoredRun,
  fromS: number,
  leastStrengthAbv: number,
): number | null {
  let sinceS: number | null = null;
  for (let timeS = fromS; timeS < heatOffS; timeS += 1) {
    const { bathedFraction, headVapourStrengthAbv } = samples[timeS] as TrueSecond;
    if (bathedFraction < bathed) continue;
    sinceS = headVapourStrengthAbv < leastStrengthAbv ? (sinceS ?? timeS) : null;
    if (sinceS !== null && timeS - sinceS >= weakForS) return sinceS;
  }
  return null;
}

function vapourGoneS({ samples, heatOffS }: ScoredRun): number {
  const gone = samples.find(
    ({ timeS, bathedFraction }) => timeS >= heatOffS && bathedFraction < 0.5,
  );
  return gone?.timeS ?? samples.length;
}
