import type { VapourScale } from '../vapour-scale.ts';

/** A temperature as people read it: `78.4 °C`. */
export function celsius(temperatureC: number): string {
  return `${temperatureC.toFixed(1)} °C`;
}

/** A temperature difference: `0.35 K`. */
export function kelvin(differenceK: number): string {
  return `${differenceK.toFixed(2)} K`;
}

/** A rate: `0.42 K/min`. */
export function kelvinPerMinute(rateKPerS: number): string {
  return `${(60 * rateKPerS).toFixed(2)} K/min`;
}

/** A span of time: seconds below two minutes, minutes above. */
export function span(seconds: number): string {
  return seconds < 120 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;
}

/** A probability: `97 %`, never a bare 100. */
export function percent(probability: number): string {
  const rounded = Math.round(100 * probability);
  return rounded >= 100 ? 'over 99 %' : `${rounded} %`;
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
