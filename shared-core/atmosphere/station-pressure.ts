import { saturationPressureKPa } from '../equilibrium/index.ts';
import { assertNever, requireInRange } from '../result/index.ts';
import { type Contribution, combineContributions } from '../uncertainty/index.ts';
import { worded } from '../wording/index.ts';
import {
  altitudeDoubts,
  barometerDoubts,
  channelDoubts,
  seaLevelDoubts,
} from './pressure-doubts.ts';
import type { PressureEvidence, StationPressure } from './pressure-evidence.ts';
import { stationPressureFromSeaLevelKPa } from './sea-level-reduction.ts';
import { pressureAtAltitudeKPa } from './standard-atmosphere.ts';
import { steamDoubts } from './steam-doubts.ts';

/**
 * The pressure that acts on the still from whatever is known, with its uncertainty: `u² = Σ (cᵢ uᵢ)²` over the
 * doubts of that source (instrument limits, weather since, altitude, air column).
 *
 * With the defaults the expanded uncertainty (k = 2) is about 0.2 kPa for a barometer, 0.1 kPa for a channel,
 * 0.3 kPa for a weather report near sea level and 2 kPa for the altitude alone. Steam gives `p = psat(T)`, which as an air
 * pressure is only as good as the probe: half a kelvin is 1.8 kPa.
 *
 * @param evidence station pressure [kPa], 50 … 115; sea-level pressure [kPa], 85 … 110; altitude [m], −430 … 5000; steam
 * [°C], 80 … 105
 * @throws OutOfRangeError outside these ranges
 *
 * Source: JCGM 100:2008, equation (10); the size of each doubt carries its own source in `reason`. IAPWS SR1-86(1992) for psat.
 *
 * @example
 * stationPressure({ kind: 'altitude', altitudeM: 0 }).expandedUncertaintyKPa // ≈ 2.02 ± 0.02
 * stationPressure({ kind: 'barometer', stationPressureKPa: 98.6 }).standardUncertaintyKPa // ≈ 0.093 ± 0.002
 * const steam = { kind: 'steam', steamC: 99.974, readingStandardUncertaintyK: 0.03, probeStandardUncertaintyK: 0.29 };
 * stationPressure(steam).pressureKPa // ≈ 101.325 ± 0.003
 * stationPressure(steam).standardUncertaintyKPa // ≈ 1.06 ± 0.01
 */
export function stationPressure(evidence: PressureEvidence): StationPressure {
  const pressureKPa = pressureOf(evidence);
  const { lines, combinedStandardUncertainty } = combineContributions(doubtsOf(evidence));
  const expandedUncertaintyKPa = 2 * combinedStandardUncertainty;
  const main = lines[0];
  return {
    kind: 'station',
    source: evidence.kind,
    pressureKPa,
    standardUncertaintyKPa: combinedStandardUncertainty,
    expandedUncertaintyKPa,
    components: lines,
    sentence: sentenceWords(evidence.kind, pressureKPa, expandedUncertaintyKPa, main?.name),
  };
}

function sentenceWords(
  source: PressureEvidence['kind'],
  pressureKPa: number,
  expandedUncertaintyKPa: number,
  largestDoubt: string | undefined,
): string {
  const values = {
    pressure: pressureKPa.toFixed(1),
    doubt: expandedUncertaintyKPa.toFixed(1),
    origin: origins[source],
  };
  return largestDoubt === undefined
    ? worded(
        'Air pressure at the still: {pressure} kPa ± {doubt} kPa (k = 2), from {origin}.',
        values,
      )
    : worded(
        'Air pressure at the still: {pressure} kPa ± {doubt} kPa (k = 2), from {origin}; the largest doubt is the {largest}.',
        { ...values, largest: largestDoubt },
      );
}

const origins: Readonly<Record<PressureEvidence['kind'], string>> = {
  barometer: worded('a barometer reading'),
  channel: worded('the pressure sensor'),
  'sea-level-report': worded('a weather report converted to this altitude'),
  steam: worded('the steam of boiling water'),
  altitude: worded('the altitude alone'),
};

function pressureOf(evidence: PressureEvidence): number {
  switch (evidence.kind) {
    case 'barometer':
    case 'channel':
      requireInRange(worded('station pressure'), evidence.stationPressureKPa, 50, 115, 'kPa');
      return evidence.stationPressureKPa;
    case 'sea-level-report':
      return stationPressureFromSeaLevelKPa(evidence);
    case 'steam':
      requireInRange(worded('temperature of the steam'), evidence.steamC, 80, 105, '°C');
      return saturationPressureKPa('water', evidence.steamC);
    case 'altitude':
      requireInRange('altitude', evidence.altitudeM, -430, 5000, 'm');
      return pressureAtAltitudeKPa(evidence.altitudeM);
    default:
      return assertNever(evidence);
  }
}

function doubtsOf(evidence: PressureEvidence): readonly Contribution[] {
  switch (evidence.kind) {
    case 'barometer':
      return barometerDoubts(evidence);
    case 'channel':
      return channelDoubts(evidence);
    case 'sea-level-report':
      return seaLevelDoubts(evidence);
    case 'steam':
      return steamDoubts(evidence);
    case 'altitude':
      return altitudeDoubts(evidence);
    default:
      return assertNever(evidence);
  }
}
