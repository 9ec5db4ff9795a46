import { steamRealisationK, weatherInLessonKPa } from '../atmosphere/index.ts';
import type { RunSettings } from '../run/index.ts';
import { standardFromHalfWidth } from '../uncertainty/index.ts';

/** What is in doubt of a head temperature above the azeotrope or below the limit: two doubts that have nothing to do with each other. */
export interface ScaleDoubts {
  readonly temperatureUncertaintyK: number;
  readonly pressureUncertaintyKPa: number;
}

/** Plateau and limit move so much less with the air pressure than steam: 0.901 … 0.905 from 60 to 110 kPa, by `azeotrope` and IAPWS. */
const plateauPerSteam = 0.9;

/**
 * What probe and air pressure leave in doubt together, of where the plateau and the limit lie on this probe's own scale.
 *
 * From a barometer or an altitude the two are independent. From steam, `p = psat(s)`, the pressure holds the probe's own error b, and
 * the limit by it lies at `T_limit(p) + b` up to a tenth of b: what is left is
 * `u² = ((1 − r) u_probe)² + r² (u_settled² + (0.05 K)²/3) + u_gap²`, r = 0.9, and the weather of a lesson.
 *
 * @param settings probe (standard uncertainty [K]) and air pressure [kPa] with its source, as a run's settings hold them
 * @returns standard uncertainties [K] and [kPa], to be combined as independent ones
 *
 * Source: JCGM 100:2008, equation (10), and 5.2.2 for what is shared.
 *
 * @example
 * const probe = { standardUncertaintyK: 0.29 };
 * const steam = { shownC: 99.9, standardUncertaintyK: 0.03, gapStandardUncertaintyK: 0.06 };
 * const pressure = { pressureKPa: 101, standardUncertaintyKPa: 1.06, source: 'steam', altitudeM: null, steam };
 * scaleDoubts({ probe, pressure }).temperatureUncertaintyK // ≈ 0.077 ± 0.001
 * scaleDoubts({ probe, pressure: { ...pressure, source: 'barometer' } }) // => {"temperatureUncertaintyK":0.29,"pressureUncertaintyKPa":1.06}
 */
export function scaleDoubts({
  probe,
  pressure,
}: {
  readonly probe: Pick<RunSettings['probe'], 'standardUncertaintyK'>;
  readonly pressure: RunSettings['pressure'];
}): ScaleDoubts {
  const { source, steam } = pressure;
  if (source !== 'steam' || steam === undefined) {
    return {
      temperatureUncertaintyK: probe.standardUncertaintyK,
      pressureUncertaintyKPa: pressure.standardUncertaintyKPa,
    };
  }
  return {
    temperatureUncertaintyK: Math.hypot(
      (1 - plateauPerSteam) * probe.standardUncertaintyK,
      plateauPerSteam * steam.standardUncertaintyK,
      plateauPerSteam * standardFromHalfWidth('rectangular', steamRealisationK),
      steam.gapStandardUncertaintyK,
    ),
    pressureUncertaintyKPa: weatherInLessonKPa(),
  };
}
