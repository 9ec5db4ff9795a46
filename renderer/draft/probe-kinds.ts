import { say, sensorStandardUncertaintyK } from '#shared-core';
import type { ProbeKind } from '../stores/index.ts';

export interface ProbeKindFacts {
  readonly label: string;
  /** Standard uncertainty near the plateau before calibration, to the hundredth shown to people. */
  readonly standardUncertaintyK: number;
  readonly lagT90S: number;
  /** How much more or less than in steam it may be off at the plateau, as a standard uncertainty [K]. */
  readonly steamGapStandardUncertaintyK: number;
}

/** Where heads hold [°C], rounded. */
export const plateauC = 80;

/** Steam stands so far above the plateau [K]: 20 to 22 at any air pressure. */
const steamGapK = 22;

/**
 * What is known of a probe from its kind alone. Lags: common practice, no source. From plateau to steam a platinum resistor may be off by
 * the slope of its class (IEC 60751:2008, table 3), a thermocouple by that of its own (IEC 60584-1, from memory); a digital one promises
 * only 2 K above 85 °C, and is seen to change its error by some tenths: limits of 0.3 K, common practice, no source.
 */
export const probeKinds: Readonly<Record<ProbeKind, ProbeKindFacts>> = {
  digital: factsOf(say('Digital, in a steel sleeve'), { kind: 'one-wire' }, 15, 0.3),
  'platinum-a': factsOf(
    say('Platinum, class A'),
    { kind: 'platinum', toleranceClass: 'A' },
    10,
    0.002 * steamGapK,
  ),
  'platinum-b': factsOf(
    say('Platinum, class B'),
    { kind: 'platinum', toleranceClass: 'B' },
    10,
    0.005 * steamGapK,
  ),
  thermocouple: factsOf(
    say('Thermocouple'),
    { kind: 'thermocouple', type: 'K', toleranceClass: 1 },
    3,
    0.004 * steamGapK,
  ),
};

function factsOf(
  label: string,
  sensor: Parameters<typeof sensorStandardUncertaintyK>[0],
  lagT90S: number,
  steamGapLimitK: number,
): ProbeKindFacts {
  const hundredths = (kelvins: number) => Math.round(100 * kelvins) / 100;
  return {
    label,
    standardUncertaintyK: hundredths(sensorStandardUncertaintyK(sensor, plateauC)),
    lagT90S,
    // Limits of error are a rectangular distribution, u = a/√3 (JCGM 100:2008, 4.3.7).
    steamGapStandardUncertaintyK: hundredths(steamGapLimitK / Math.sqrt(3)),
  };
}
