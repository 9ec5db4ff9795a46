import { saturationPressureKPa } from '../equilibrium/index.ts';
import { type Contribution, standardFromHalfWidth } from '../uncertainty/index.ts';
import { worded } from '../wording/index.ts';
import { weatherSince } from './pressure-doubts.ts';
import type { SteamEvidence } from './pressure-evidence.ts';

/** Draughts, drops of condensate and short immersion in a flask's neck, limits ± [K]; common practice, no source. */
export const steamRealisationK = 0.05;

export function steamDoubts(evidence: SteamEvidence): readonly Contribution[] {
  const { steamC, readingStandardUncertaintyK, probeStandardUncertaintyK, ageH } = evidence;
  const kPaPerK = saturationSlopeKPaPerK(steamC);
  return [
    {
      name: worded('error of the probe'),
      distribution: 'normal',
      inputStandardUncertainty: probeStandardUncertaintyK,
      sensitivity: kPaPerK,
      reason: worded('what is not known of the probe after any calibration'),
    },
    {
      name: worded('settling of the reading'),
      distribution: 'normal',
      inputStandardUncertainty: readingStandardUncertaintyK,
      sensitivity: kPaPerK,
      reason: worded('scatter, drift and smallest step of the reading in the steam'),
    },
    {
      name: worded('steam in the neck of a flask'),
      distribution: 'rectangular',
      inputStandardUncertainty: standardFromHalfWidth('rectangular', steamRealisationK),
      sensitivity: kPaPerK,
      reason: worded('limits ± {limit} K; common practice, no source', {
        limit: steamRealisationK,
      }),
    },
    weatherSince(ageH),
  ];
}

/** dp/dT of water's saturation curve, as a difference over ± 0.05 K. */
function saturationSlopeKPaPerK(temperatureC: number): number {
  const stepK = 0.05;
  return (
    (saturationPressureKPa('water', temperatureC + stepK) -
      saturationPressureKPa('water', temperatureC - stepK)) /
    (2 * stepK)
  );
}
