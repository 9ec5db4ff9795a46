import type { ByHandRun } from './by-hand-run.ts';

/** Who is told the strength of the vapour itself, second by second, and calls when it has been too weak for so long. */
export interface KnownVapour {
  readonly name: string;
  readonly weakForS: number;
}

/** What no probe can better: the wait decides between calling in a spell that passes and calling late. */
export const knownVapours: readonly KnownVapour[] = [1, 40, 60, 90].map((weakForS) => ({
  name: `vapour known, weak for ${weakForS} s`,
  weakForS,
}));

const bathedShare = 0.9;

/** The call by the vapour itself; it waits for the main fraction to begin. */
export function knownVapourCall(
  { course, settings }: ByHandRun,
  mainFromS: number | null,
  { weakForS }: KnownVapour,
): number | null {
  if (mainFromS === null) return null;
  let weakS = 0;
  for (let timeS = mainFromS; timeS < course.heatOffS; timeS += 1) {
    if ((course.bathed[timeS] as number) < bathedShare) continue;
    weakS = (course.abv[timeS] as number) < settings.leastStrengthAbv ? weakS + 1 : 0;
    if (weakS >= weakForS) return timeS;
  }
  return null;
}
