import type { Estimate } from '../uncertainty/index.ts';

const space = '\u00a0';

/** A value and its standard uncertainty, in one unit. */
interface Measured {
  readonly value: number;
  readonly standardUncertainty: number;
}

/** A number with a fixed count of decimals and a true minus. */
export function numberWords(value: number, decimals: number): string {
  const fixed = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(fixed) !== 0 ? `−${fixed}` : fixed;
}

/** Decimals that leave two significant figures in an expanded uncertainty (JCGM 100, 7.2.6). */
export function decimalsFor(expanded: number): number {
  if (!(expanded > 0)) return 2;
  // Rounded first: 0.0999… is written 0.10.
  const rounded = Number(expanded.toPrecision(2));
  return Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(rounded))));
}

/**
 * A measured value as it is reported: `y ± U`, U expanded with k = 2, both to the two significant figures of U.
 *
 * @param quantity value and standard uncertainty in the unit given
 *
 * Source: JCGM 100:2008, 7.2.3 and 7.2.6.
 * @example
 * measuredWords({ value: 78.4074, standardUncertainty: 0.109 }, '°C') // => "(78.41\u00a0±\u00a00.22)\u00a0°C"
 * measuredWords({ value: 88.4, standardUncertainty: 3.26 }, '%') // => "(88.4\u00a0±\u00a06.5)\u00a0%"
 */
export function measuredWords({ value, standardUncertainty }: Measured, unit: string): string {
  const expanded = 2 * standardUncertainty;
  const decimals = decimalsFor(expanded);
  return (
    `(${numberWords(value, decimals)}${space}±${space}${numberWords(expanded, decimals)})` +
    `${space}${unit}`
  );
}

/**
 * An interval in words: `88.1–93.0 % vol`, with decimals that leave two significant figures in half its width.
 *
 * @param interval low ≤ high in the unit given
 *
 * Source: as for {@link measuredWords}.
 * @example
 * intervalWords({ value: 90.1, low: 88.14, high: 93.02 }, '% vol') // => "88.1–93.0\u00a0% vol"
 */
export function intervalWords({ low, high }: Estimate, unit: string): string {
  const decimals = decimalsFor((high - low) / 2);
  const [from, to] = [numberWords(low, decimals), numberWords(high, decimals)];
  const withUnit = unit === '' ? '' : `${space}${unit}`;
  return from === to ? `${from}${withUnit}` : `${from}–${to}${withUnit}`;
}
