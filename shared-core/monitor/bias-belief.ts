import type { RunSettings } from '../run/index.ts';
import type { VapourScale } from './vapour-scale.ts';

/** How far the probe's scale (and the assumed pressure) is believed to be off: reading − truth [K]. */
export interface BiasBelief {
  readonly meanK: number;
  readonly sdK: number;
}

/** Typical height of a plateau above the azeotrope [K]: good packing 0.2, little reflux 1 or more. */
const typicalHeightK = 0.6;
/** Scatter of published data about the equilibrium model [K]. */
const modelSdK = 0.05;

/** What is believed before the run: the probe's calibration and the pressure's uncertainty. */
export function priorBias(settings: RunSettings, scale: VapourScale): BiasBelief {
  const fromPressureK = scale.kelvinPerKPa * settings.pressure.standardUncertaintyKPa;
  return {
    meanK: 0,
    sdK: Math.hypot(settings.probe.standardUncertaintyK, fromPressureK, modelSdK),
  };
}

/**
 * Learns the bias from a held plateau. No ethanol–water vapour condenses below the azeotrope, so the
 * lowest level `m` the head was held at is at least azeotrope + bias. With a normal prior of standard
 * deviation s and an exponential prior (mean h) for the plateau's height, the bias is normal with mean
 * `s²/h`, cut off above `m − azeotrope`; returned are that distribution's mean and standard deviation.
 */
export function biasFromPlateau(
  prior: BiasBelief,
  lowestLevelC: number,
  levelSdK: number,
  scale: VapourScale,
): BiasBelief {
  const s = prior.sdK;
  const centre = prior.meanK + (s * s) / typicalHeightK;
  const cut = (lowestLevelC - scale.azeotropeC - centre) / s;
  const ratio = normalHazard(cut);
  const meanK = centre - s * ratio;
  const variance = s * s * Math.max(0.02, 1 - cut * ratio - ratio * ratio);
  return { meanK, sdK: Math.hypot(Math.sqrt(variance), levelSdK) };
}

/** φ(z)/Φ(z): how strongly cutting a normal distribution off above z pulls its mean down. */
function normalHazard(z: number): number {
  // Below −5 both underflow together; the asymptote −z − 1/z is good to 1 % there.
  if (z < -5) return -z - 1 / z;
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / normalCumulative(z);
}

/**
 * Standard normal distribution function, |error| < 8e-8.
 *
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.17.
 */
export function normalCumulative(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}
