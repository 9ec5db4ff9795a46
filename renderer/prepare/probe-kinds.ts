import type { ProbeKind } from './prepare-draft.ts';

export interface ProbeKindFacts {
  readonly label: string;
  /** Standard uncertainty near 78 °C before calibration: limits of error divided by √3 (JCGM 100, 4.3.7). */
  readonly standardUncertaintyK: number;
  readonly lagT90S: number;
}

/**
 * What is known of a probe from its kind alone. Limits of error: platinum IEC 60751:2022, class A
 * ±(0.15 + 0.002 t) K and class B ±(0.3 + 0.005 t) K; digital one-wire sensors ±0.5 K by their data
 * sheet; thermocouple type K class 1 ±1.5 K (IEC 60584-1, from memory). Lags: common practice, no source.
 */
export const probeKinds: Readonly<Record<ProbeKind, ProbeKindFacts>> = {
  digital: { label: 'Digital, in a steel sleeve', standardUncertaintyK: 0.29, lagT90S: 15 },
  'platinum-a': { label: 'Platinum, class A', standardUncertaintyK: 0.18, lagT90S: 10 },
  'platinum-b': { label: 'Platinum, class B', standardUncertaintyK: 0.4, lagT90S: 10 },
  thermocouple: { label: 'Thermocouple', standardUncertaintyK: 0.87, lagT90S: 3 },
};
