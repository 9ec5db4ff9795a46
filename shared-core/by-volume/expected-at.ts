import type { ExpectedPoint } from './batch-by-volume.ts';

/** A volume reached by adding steps may miss the last point by its last bits [mL]. */
const sameVolumeMl = 1e-9;

/**
 * What a course expects at a volume: between two of its points on a straight line.
 *
 * @param course from {@link batchByVolume}, in rising order of volume; null where theory has none
 * @param volumeMl distillate collected [mL], ≥ 0
 * @returns head [°C] and strength [% vol at 20 °C] at that volume; null beyond the end of the course, where the pot holds no ethanol any more
 *
 * Source: linear interpolation; between the 120 points of a course it lies within 0.05 K of one worked out to that very volume (tested).
 * @example
 * const course = [{ volumeMl: 0, headC: 80, strengthAbv: 90 }, { volumeMl: 10, headC: 84, strengthAbv: 80 }];
 * expectedAt(course, 2.5) // => { "volumeMl": 2.5, "headC": 81, "strengthAbv": 87.5 }
 * expectedAt(course, 11) // => null
 */
export function expectedAt(
  course: readonly ExpectedPoint[] | null,
  volumeMl: number,
): ExpectedPoint | null {
  const right = course?.findIndex((point) => point.volumeMl >= volumeMl - sameVolumeMl) ?? -1;
  const [after, before] = [course?.[right], course?.[right - 1]];
  if (after === undefined) return null;
  if (before === undefined) return after;
  const share = (volumeMl - before.volumeMl) / (after.volumeMl - before.volumeMl);
  const between = (from: number, to: number) => from + share * (to - from);
  return {
    volumeMl,
    headC: between(before.headC, after.headC),
    strengthAbv: between(before.strengthAbv, after.strengthAbv),
  };
}
