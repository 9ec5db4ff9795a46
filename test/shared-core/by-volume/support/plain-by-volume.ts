import type { RunByVolume } from '../../../../shared-core/by-volume/run-by-volume.ts';

/** A run by volume through these points [mL, °C] at 98.3 kPa, of which theory says nothing, otherwise as a test wants it. */
export function plainByVolume(
  points: readonly (readonly [volumeMl: number, headC: number])[],
  changes: Partial<RunByVolume> = {},
): RunByVolume {
  return {
    basis: 'table',
    pressureKPa: 98.3,
    course: points.map(([volumeMl, headC]) => ({
      volumeMl,
      headC,
      vapourAbv: null,
      collectedAbv: null,
      simple: null,
      column: null,
    })),
    verdict: { mainFraction: true, because: '', cuts: [] },
    collected: null,
    rayleigh: null,
    rectified: null,
    doubt: null,
    aboveRayleighK: null,
    ...changes,
  };
}
