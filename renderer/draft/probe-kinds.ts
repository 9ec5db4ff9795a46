import { say, sensorStandardUncertaintyK } from '#shared-core';
import type { ProbeKind } from '../stores/index.ts';

export interface ProbeKindFacts {
  readonly label: string;
  /** Standard uncertainty near the plateau before calibration, to the hundredth shown to people. */
  readonly standardUncertaintyK: number;
  readonly lagT90S: number;
}

/** Where heads hold [°C], rounded. */
export const plateauC = 80;

/** What is known of a probe from its kind alone. Lags: common practice, no source. */
export const probeKinds: Readonly<Record<ProbeKind, ProbeKindFacts>> = {
  digital: factsOf(say('Digital, in a steel sleeve'), { kind: 'one-wire' }, 15),
  'platinum-a': factsOf(say('Platinum, class A'), { kind: 'platinum', toleranceClass: 'A' }, 10),
  'platinum-b': factsOf(say('Platinum, class B'), { kind: 'platinum', toleranceClass: 'B' }, 10),
  thermocouple: factsOf(
    say('Thermocouple'),
    { kind: 'thermocouple', type: 'K', toleranceClass: 1 },
    3,
  ),
};

function factsOf(
  label: string,
  sensor: Parameters<typeof sensorStandardUncertaintyK>[0],
  lagT90S: number,
): ProbeKindFacts {
  const standardUncertaintyK = Math.round(100 * sensorStandardUncertaintyK(sensor, plateauC)) / 100;
  return { label, standardUncertaintyK, lagT90S };
}
