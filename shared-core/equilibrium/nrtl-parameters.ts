/** Temperature-dependent NRTL parameters; index 1 is ethanol, 2 is water. */
export interface NrtlParameters {
  /** τ12 = a12 + b12 · T0/T */
  readonly a12: number;
  readonly b12: number;
  /** τ21 = a21 + b21 · T0/T */
  readonly a21: number;
  readonly b21: number;
  /** α = alpha0 + alpha1 · (T/T0 − 1) */
  readonly alpha0: number;
  readonly alpha1: number;
}

/** Reference temperature T0 of the parameters [K]; near the plateau of a still at 1 atm. */
export const nrtlReferenceTemperatureK = 350;

/** Fitted by `npx tsx scripts/fit-activity-model.ts` to the sets in test/reference/vle. */
export const nrtlParameters: NrtlParameters = {
  a12: 1.74547,
  b12: -1.62588,
  a21: 1.63314,
  b21: 0.00192701,
  alpha0: 0.418591,
  alpha1: 1.38783,
};
