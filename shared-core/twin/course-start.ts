import type { GuessPrior, StillGuess } from './still-guess.ts';

/** How far a run has come when vapour reaches the bulb, in time along its course at a guess's own heat. */
export interface CourseStart {
  readonly courseS: number;
  readonly sdS: number;
}

/**
 * Where nobody knows how the pot came to the boil: until that heat has been eased, a minute gives as much as several later. By simulation
 * of three kinds of still, where 120 to 200 did equally well.
 */
export const unseenStart: CourseStart = { courseS: 0, sdS: 120 };

/** So long the heat of the heat-up goes on once vapour has come, until somebody eases it [s]. By simulation of three kinds of still. */
const easedAfterS = 60;
/** What came early is known to this share of itself, and never better than so well [s]. */
const earlyShareSd = 0.7;
const leastStartSdS = 80;

/** What the heat-up's heat drives up beyond the guess's own comes over whole, since the column's loss is met already. */
export function startOf(guess: StillGuess, { heatUpMolPerS }: GuessPrior): CourseStart {
  if (heatUpMolPerS === null) return unseenStart;
  const more = Math.max(0, heatUpMolPerS / guess.vapourMolPerS - 1);
  const courseS = easedAfterS * more * (1 + guess.refluxRatio);
  return { courseS, sdS: Math.hypot(leastStartSdS, earlyShareSd * courseS) };
}
