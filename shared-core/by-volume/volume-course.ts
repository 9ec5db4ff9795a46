import { meanStrength, type StrengthPoint } from '../distillate/index.ts';
import { headVapour } from '../equilibrium/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import type { RunSettings } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import type { VolumeReading } from './volume-reading.ts';

/** A point of the course: what came over at this volume, and all that had come over by then. */
export interface VolumePoint {
  readonly volumeMl: number;
  /** Calibrated [°C]. */
  readonly headC: number;
  /** Strength of the vapour [% vol at 20 °C]; null below the azeotrope, where the bulb hangs in no vapour of ethanol and water. */
  readonly vapourAbv: Estimate | null;
  /** Mean strength of all distillate so far [% vol]; null at 0 mL. */
  readonly collectedAbv: Estimate | null;
}

/** A course, and how strong what came over was by it. */
export interface CourseByVolume {
  readonly points: readonly VolumePoint[];
  /** What means over it are taken of; empty where no strength is known. */
  readonly strengths: readonly StrengthPoint[];
  /** All that came over while its strength is known [mL], which may be a little more than at the last point. */
  readonly allMl: number;
}

/**
 * The course of a table by volume: at each volume the strength of the vapour from the head temperature, and the
 * mean strength of all distillate so far by `meanStrength`.
 *
 * @param readings volumes [mL] in rising order, head temperatures as read [°C]
 * @param settings probe (offset [K], gain, u [K]) and pressure [kPa]
 *
 * Source: see `headVapour` and `meanStrength`.
 * @example
 * const at = (volumeMl, headC) => ({ volumeMl, headC });
 * const course = volumeCourse([at(1, 80), at(2, 80), at(3, 80)], defaultRunSettings);
 * course.points.at(-1).collectedAbv.value - course.points[0].vapourAbv.value // ≈ 0 ± 1e-9
 */
export function volumeCourse(
  readings: readonly VolumeReading[],
  { probe, pressure }: Pick<RunSettings, 'probe' | 'pressure'>,
): CourseByVolume {
  const read = readings.map(({ volumeMl, headC: readC }) => {
    const headC = probe.offsetK + probe.gain * readC;
    const vapour = headVapour({
      temperatureC: Math.min(150, Math.max(-50, headC)),
      pressureKPa: pressure.pressureKPa,
      ...scaleDoubts({ probe, pressure }),
    });
    const vapourAbv = vapour.kind === 'below-azeotrope' ? null : vapour.alcoholByVolume;
    return { volumeMl, headC, vapourAbv };
  });
  const strengths = read.flatMap(({ volumeMl, vapourAbv }): StrengthPoint[] =>
    vapourAbv === null ? [] : [{ volumeMl, abv: vapourAbv, stretch: null }],
  );
  const allMl = strengths.at(-1)?.volumeMl ?? 0;
  return { points: withCollected(read, strengths), strengths, allMl };
}

/** The mean of all that came over up to each point, where vapour was there to tell. */
export function withCollected(
  points: readonly Omit<VolumePoint, 'collectedAbv'>[],
  strengths: readonly StrengthPoint[],
): readonly VolumePoint[] {
  return points.map((point) => ({
    ...point,
    collectedAbv:
      point.vapourAbv === null || point.volumeMl <= 0
        ? null
        : meanStrength(strengths, 0, point.volumeMl),
  }));
}
