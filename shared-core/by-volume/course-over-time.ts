import { type DistillateCourse, distillateAt } from '../distillate/index.ts';
import type { RunSettings } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type CourseByVolume, withCollected } from './volume-course.ts';

/** The head at a time of a run. */
export interface HeadAtTime {
  readonly timeS: number;
  /** Calibrated [°C]. */
  readonly headC: number;
  readonly isBathed: boolean;
  /** As the monitor told it [% vol at 20 °C]; null where it told none. */
  readonly vapourAbv: Estimate | null;
}

/** A bulb is within a hundredth of a step after so many of its t90. */
const lagsToFollow = 2;
/** More points than a figure is wide show nothing more. */
const mostPoints = 200;

/**
 * The course of a run whose volumes are known over time: its head temperatures at the volumes of its distillate, with the strengths that the monitor concluded from
 * them, the same that the books weigh. Beyond the last volume that anybody read nothing is made up.
 *
 * @returns null where no volume is known, or fewer than three points are
 */
export function courseOverTime(
  rows: readonly HeadAtTime[],
  distillate: DistillateCourse | null,
  { probe }: Pick<RunSettings, 'probe'>,
): CourseByVolume | null {
  const arrivedS = distillate?.points[0]?.timeS;
  if (distillate === null || distillate.basis === null || arrivedS === undefined) return null;
  const { points: strengths, knownUntilS } = distillate;
  // While the bulb follows the front it reads cooler than the vapour, as if stronger than any.
  const followedS = arrivedS + lagsToFollow * probe.lagT90S;
  const heads = rows.filter(
    ({ timeS, isBathed }) => isBathed && timeS >= followedS && timeS <= knownUntilS,
  );
  const everyNth = Math.max(1, Math.ceil(heads.length / mostPoints));
  const shown = heads.filter((_, index) => index % everyNth === 0 || index === heads.length - 1);
  if (shown.length < 3) return null;
  const points = shown.map(({ timeS, headC, vapourAbv }) => ({
    volumeMl: distillateAt(distillate, timeS),
    headC,
    vapourAbv,
  }));
  const allMl = distillateAt(distillate, knownUntilS);
  return { points: withCollected(points, strengths), strengths, allMl };
}
