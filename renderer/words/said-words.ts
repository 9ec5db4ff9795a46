import type { Decimal } from './number-words.ts';

const units = '°C|K/min|K|kPa|hPa|mL|%|min|s|h|W|g|m';
const numberAndUnit = new RegExp(`(\\d) (?=(?:${units})(?![\\p{L}\\d]))`, 'gu');

/**
 * A sentence of the monitor as this person reads it: a number stays on one line with its unit, and
 * has the person's decimal sign. The record keeps the sentence as it was made.
 */
export function saidWords(sentence: string, decimal: Decimal): string {
  return sentence
    .replace(numberAndUnit, '$1\u00a0')
    .replaceAll('% vol', '%\u00a0vol')
    .replace(/(\d)\.(?=\d)/g, `$1${decimal}`);
}
