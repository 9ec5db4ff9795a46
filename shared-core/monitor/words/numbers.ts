import { worded } from '../../wording/index.ts';
import type { Situation } from '../situation/situation.ts';
import type { HeadState } from '../situation/vapour-filter.ts';
import type { VapourScale } from '../situation/vapour-scale.ts';

/** A temperature as people read it: `78.4 °C`. */
export function celsius(temperatureC: number): string {
  return `${temperatureC.toFixed(1)} °C`;
}

/** No difference of a head is known better, none smaller is told [K]. Source: the last digit that is told. */
const leastToldK = 0.1;
/** The last whole percentages before certainty, which is never told [%]. */
const [nearlyNever, nearlySure] = [1, 99];

/** The size of a temperature difference, to a tenth at most. `0.4 K`, `less than 0.1 K`. */
export function kelvin(differenceK: number): string {
  const size = Math.abs(differenceK);
  return size < 0.095
    ? worded('less than {leastTold} K', { leastTold: leastToldK })
    : `${size.toFixed(1)} K`;
}

/**
 * How the head moves, with its direction in words: `rising 0.4 K/min`, `falling 2 K/min`; `hardly moving` below a tenth,
 * and no number within two standard deviations. Of a head that has departed from its level it is not said that it hardly moves.
 */
export function moving(
  { rateKPerS, rateSdKPerS }: Pick<HeadState, 'rateKPerS' | 'rateSdKPerS'>,
  { departedS }: Pick<Situation, 'departedS'>,
): string {
  const size = Math.abs(60 * rateKPerS);
  if (size < 0.095) return departedS === null ? worded('hardly moving') : worded('at no sure rate');
  if (size < 2 * 60 * rateSdKPerS) return worded('at no sure rate');
  const digits = size < 1.95 ? 1 : 0;
  const rate = `${size.toFixed(digits)} K/min`;
  return rateKPerS > 0 ? worded('rising {rate}', { rate }) : worded('falling {rate}', { rate });
}

/** A span of time: seconds below two minutes, minutes above. */
export function span(seconds: number): string {
  return seconds < 120 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;
}

/** A probability: `97 %`, never a bare 100 or 0. */
export function percent(probability: number): string {
  const rounded = Math.round(100 * probability);
  if (rounded > nearlySure) return worded('over {nearlySure} %', { nearlySure });
  return rounded < nearlyNever ? worded('under {nearlyNever} %', { nearlyNever }) : `${rounded} %`;
}

/** A strength range: `88–93 % vol`. */
export function strengthRange(low: number, high: number): string {
  return low.toFixed(0) === high.toFixed(0)
    ? `${low.toFixed(0)} % vol`
    : `${low.toFixed(0)}–${high.toFixed(0)} % vol`;
}

/** Strength of the vapour at a temperature with its 95 % interval. */
export function vapourStrength(
  scale: VapourScale,
  temperatureC: number,
  sdK: number,
): { readonly value: number; readonly low: number; readonly high: number } {
  return {
    value: scale.strengthAbv(temperatureC),
    low: scale.strengthAbv(temperatureC + 2 * sdK),
    high: scale.strengthAbv(temperatureC - 2 * sdK),
  };
}
