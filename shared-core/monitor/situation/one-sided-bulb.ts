import { type HeadGaussian, place, sdAt } from './head-gaussian.ts';
import { logNormalCumulative } from './normal.ts';

/** A bulb may read less than the vapour, hardly more: by a tenth of a kelvin at most (radiation, stem) [K]. */
const readsMoreK = 0.1;
/** Without vapour a bulb hardly warms: warm glass and rising air may do that much [K/s]. */
const warmsKPerS = 0.05;
/** Vapour that gets stronger, as a column fills or after a break, cools by no more than this for long [K/s]. */
export const strengthensKPerS = 0.02;

/**
 * Logarithm of how likely a bathed bulb's belief is at all: a pot weakens, its vapour gets hotter or stays; it is the bulb
 * without vapour that cools by the minute.
 */
export function logWetPossible(belief: HeadGaussian): number {
  const stays = (belief.mean[place.rate] as number) + strengthensKPerS;
  return logNormalCumulative(stays / sdAt(belief, place.rate));
}

/** The same without vapour: such a bulb is cooler than the vapour, and does not warm. */
export function logDryPossible(belief: HeadGaussian): number {
  const { mean } = belief;
  const coolerSdK = Math.hypot(sdAt(belief, place.vapour), readsMoreK);
  const cooler = (mean[place.vapour] as number) + readsMoreK - (mean[place.bulb] as number);
  const falls = (warmsKPerS - (mean[place.drift] as number)) / sdAt(belief, place.drift);
  return logNormalCumulative(cooler / coolerSdK) + logNormalCumulative(falls);
}
