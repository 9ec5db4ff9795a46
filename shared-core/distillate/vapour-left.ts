import type { StageSpan } from '../stages/index.ts';

/** A head that lies less than this below its height has not begun to fall [K]; above the noise of any probe, chosen here. */
const fallK = 0.3;

/** A bulb cools within minutes: what lies further before the cool-down is no part of the fall [s]; chosen here. */
export const longestFallS = 1800;

/**
 * When the head was last at its height before the fall that ended in cool-down: the fall is known for one only when it has lasted a while, and a bulb that cools
 * would pass for vapour that grows stronger. A strength that was told after it is none of a vapour.
 *
 * @param course head temperatures, calibrated [°C], in order of time [s]
 * @param stages as entered; one that was taken back has a later one behind it
 * @returns time [s]; Infinity while the run is not in cool-down
 *
 * Source: this project's rule.
 * @example
 * const course = [78, 79, 80, 79.9, 79, 77].map((headC, index) => ({ timeS: 10 * index, headC }));
 * vapourLeftS(course, [{ stage: 'tail', fromS: 0 }, { stage: 'cool-down', fromS: 50 }]) // => 30
 * vapourLeftS(course, [{ stage: 'tail', fromS: 0 }]) > 1e9 // => true
 */
export function vapourLeftS(
  course: readonly { readonly timeS: number; readonly headC: number }[],
  stages: readonly Pick<StageSpan, 'stage' | 'fromS'>[],
): number {
  const last = stages.at(-1);
  // A cool-down that was taken back ended nothing: the flame came back, and vapour with it.
  if (last?.stage !== 'cool-down') return Number.POSITIVE_INFINITY;
  const coolS = last.fromS;
  const before = course.filter(({ timeS }) => timeS < coolS && timeS >= coolS - longestFallS);
  let heightC = Number.NEGATIVE_INFINITY;
  for (const { headC } of before.toReversed()) {
    if (headC < heightC - fallK) break;
    heightC = Math.max(heightC, headC);
  }
  return before.findLast(({ headC }) => headC >= heightC - fallK)?.timeS ?? coolS;
}
