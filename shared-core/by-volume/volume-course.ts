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
  readonly aboveAzeotropeK: number;
  /** Strength of the vapour [% vol at 20 °C]; null below the azeotrope, where the bulb hangs in no vapour of ethanol and water. */
  readonly vapourAbv: Estimate | null;
  /** Mean strength of all distillate so far [% vol]; null at 0 mL. */
  readonly collectedAbv: Estimate | null;
}

/**
 * The course of a distillation by volume: at each volume the strength of the vapour from the head temperature, and the
 * mean strength of all distillate so far, `q̄ = (1/V) ∫ q dV` by the trapezium rule. What came over before the first usable
 * reading is taken for as strong as that one.
 *
 * Ends of the interval are carried through together: a thermometer that reads too high does so at every volume.
 *
 * @param readings volumes [mL] in rising order, head temperatures as read [°C]
 * @param settings probe (offset [K], gain, u [K]) and pressure [kPa]
 *
 * Source: see `headVapour`; the mean is that of volume fractions of ethanol, which neglects the contraction of
 * the distillate with itself (OIML R 22: below 0.3 % vol between cuts of 60 and 90 % vol).
 * @example
 * const at = (volumeMl, headC) => ({ volumeMl, headC });
 * const course = volumeCourse([at(1, 80), at(2, 80), at(3, 80)], defaultRunSettings);
 * course.at(-1).collectedAbv.value - course[0].vapourAbv.value // ≈ 0 ± 1e-9
 */
export function volumeCourse(
  readings: readonly VolumeReading[],
  { probe, pressure }: Pick<RunSettings, 'probe' | 'pressure'>,
): readonly VolumePoint[] {
  let before: { readonly volumeMl: number; readonly abv: Estimate } | null = null;
  const sums = { value: 0, low: 0, high: 0 };
  return readings.map(({ volumeMl, headC: readC }) => {
    const headC = probe.offsetK + probe.gain * readC;
    const vapour = headVapour({
      temperatureC: Math.min(150, Math.max(-50, headC)),
      pressureKPa: pressure.pressureKPa,
      ...scaleDoubts({ probe, pressure }),
    });
    const vapourAbv = vapour.kind === 'below-azeotrope' ? null : vapour.alcoholByVolume;
    if (vapourAbv !== null) {
      const from: { readonly volumeMl: number; readonly abv: Estimate } = before ?? {
        volumeMl: 0,
        abv: vapourAbv,
      };
      const widthMl = Math.max(0, volumeMl - from.volumeMl);
      for (const end of ['value', 'low', 'high'] as const) {
        sums[end] += (widthMl * (from.abv[end] + vapourAbv[end])) / 2;
      }
      before = { volumeMl, abv: vapourAbv };
    }
    const collected = (sum: number) => sum / volumeMl;
    return {
      volumeMl,
      headC,
      aboveAzeotropeK: vapour.temperatureAboveAzeotropeK,
      vapourAbv,
      collectedAbv:
        vapourAbv === null || volumeMl <= 0
          ? null
          : {
              value: collected(sums.value),
              low: collected(sums.low),
              high: collected(sums.high),
            },
    };
  });
}
