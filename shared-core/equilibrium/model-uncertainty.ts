import { requireInRange } from '../result/index.ts';

/**
 * Standard uncertainty of the equilibrium model itself, as a dew temperature:
 * `u = √(0.04² + (0.02 h)²) · max(1, 60/p)` [K], at most 0.12 K · max(1, 60/p), with h the height above the
 * azeotrope [K] and p the pressure [kPa].
 *
 * It follows the errors on sets left out of the fit (third table of scripts/fit-activity-model.ts), half
 * of whose variance is taken for scatter of the measurements. Low pressures are known less well.
 *
 * What that is worth: of the published vapours `±1.96 u` alone holds 13 of 17 (Kamihama), 12 of 15 (Carey & Lewis,
 * the older still), 7 of 11 (Voutsas, 33 kPa) and 32 of 32 (Kurihara), so less than 95 % near 1 atm: it leaves out the
 * scatter of the measurements themselves. With the scatter of each set it holds 73 of 75. From 3 to 10 K above the
 * azeotrope, where 80 % vol lies, both sets at 1 atm lie above the model, by up to 0.3 K (one point 0.8 K): there
 * the model may be off by more than u says.
 *
 * @param place temperatureAboveAzeotropeK [K], −200 … 200 (its size counts); pressure [kPa], 20 … 200
 * @returns standard uncertainty [K]
 * @throws OutOfRangeError outside these ranges
 * @see Kamihama et al. (2012), Carey & Lewis (1932), Voutsas et al. (2011), Pemberton & Mash (1978),
 * Kurihara et al. (1995), compared with this folder's NRTL model.
 * @example
 * equilibriumModelUncertaintyK({ temperatureAboveAzeotropeK: 0, pressureKPa: 101.325 }) // ≈ 0.04 ± 1e-9
 * equilibriumModelUncertaintyK({ temperatureAboveAzeotropeK: 15, pressureKPa: 101.325 }) // ≈ 0.12 ± 1e-9
 */
export function equilibriumModelUncertaintyK(place: {
  readonly temperatureAboveAzeotropeK: number;
  readonly pressureKPa: number;
}): number {
  const { temperatureAboveAzeotropeK, pressureKPa } = place;
  requireInRange('temperature above the azeotrope', temperatureAboveAzeotropeK, -200, 200, 'K');
  requireInRange('pressure', pressureKPa, 20, 200, 'kPa');
  const nearOneAtmosphere = Math.min(0.12, Math.hypot(0.04, 0.02 * temperatureAboveAzeotropeK));
  return nearOneAtmosphere * Math.max(1, 60 / pressureKPa);
}

/** Standard uncertainty of the azeotrope's mole fraction: published values at 1 atm lie within ±0.01. */
export const azeotropeMoleFractionUncertainty = 0.006;
