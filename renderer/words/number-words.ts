import { say } from '#shared-core';

export type Decimal = '.' | ',';

const minus = '−';
const noBreakSpace = '\u00a0';

/** A number with a fixed count of decimals, the person's decimal sign, and a true minus. */
export function numberWords(value: number, decimals: number, decimal: Decimal): string {
  if (!Number.isFinite(value)) return '–';
  const fixed = Math.abs(value).toFixed(decimals).replace('.', decimal);
  const isZero = /^[0.,]*$/.test(fixed);
  return value < 0 && !isZero ? minus + fixed : fixed;
}

/** `78.4 °C ± 0.5 °C` and the like: number, space that does not break, unit. */
export function quantityWords(
  value: number,
  decimals: number,
  unit: string,
  decimal: Decimal,
): string {
  return `${numberWords(value, decimals, decimal)}${noBreakSpace}${unit}`;
}

/** `88–93 % vol`. Ends that round to the same number are shown once, with “about”. */
export function rangeWords(
  interval: { readonly low: number; readonly high: number },
  decimals: number,
  unit: string,
  decimal: Decimal,
): string {
  const low = numberWords(interval.low, decimals, decimal);
  const high = numberWords(interval.high, decimals, decimal);
  return low === high
    ? say('about {value}', { value: `${low}${noBreakSpace}${unit}` })
    : `${low}–${high}${noBreakSpace}${unit}`;
}

/** A count of things, in groups of three digits from five digits on (ISO 80000-1, 7.3.1; from memory). */
export function countWords(count: number): string {
  const digits = String(Math.round(count));
  return digits.length < 5 ? digits : digits.replace(/\B(?=(\d{3})+$)/g, '\u202f');
}

/** What a person typed as a number: either decimal sign, spaces ignored; null when it is none. */
export function numberFrom(text: string): number | null {
  const plain = text
    .replace(/[\s\u202f\u00a0]/g, '')
    .replace(minus, '-')
    .replace(',', '.');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/**
 * Whether a mark for thousands may stand in what was typed: `1,700` is 1700 to one person and 1.7 to another. For
 * fields of whole units in thousands; elsewhere three decimals are ordinary.
 */
export function mayHaveThousandsMark(text: string): boolean {
  return /^[-−]?[1-9]\d{0,2}(?:[.,'’]\d{3})+(?:[.,]\d*)?$/.test(text.trim());
}

/** What to do about it. */
export const thousandsWords = say('Without a mark for thousands, please: 1700, not 1,700.');
