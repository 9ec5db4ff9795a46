import type { RawValue } from './raw-value.ts';

/** The name under which a mass goes to the receiver: nothing else in a still is weighed while it runs. */
const massName = 'mass';

const sign = String.raw`[+-]?\s*`;
const digits = String.raw`\d{1,7}(?:[.,]\d{1,5})?`;
/** Words before the number: that it is stable or not, gross or net, an answer to a question. */
const before = String.raw`(?:(?:S\s+[SDI]|ST|US|SD|N|NT|G|GS|NET|GROSS|NETTO|BRUTTO)\s*[:,]?\s*){0,2}`;
/** Words behind the unit: not yet stable, net or gross. */
const behind = String.raw`(?:\s*(?:\?|\*|S|U|US|ST|N|G|NT|GS|NET|GROSS))?`;
const mass = new RegExp(`^${before}(${sign}${digits})\\s*(kg|g)${behind}$`, 'i');
/** More on the pan than the balance can weigh, or less than nothing. */
const overload = /^(?:S\s+[+-]|OL\b.*|UL\b.*|S?\s*[HL]\s*)$/;

/**
 * The mass in one line of a balance, in its own unit; no value where it says that it is overloaded; null where the line is none of a
 * balance. A mass that has not settled is taken: under a receiver into which it drips it never settles. Tare lines are not
 * taken, since they say nothing of what is in the receiver.
 *
 * Source: outputs of laboratory balances on their serial lines as manuals describe them (from memory; there is no common standard).
 *
 * @example
 * parseBalanceLine('ST,+00085.20  g').value // => 85.2
 * parseBalanceLine('S D      85.25 g').value // => 85.25
 * parseBalanceLine('N     -    0.05 g').value // => -0.05
 * parseBalanceLine('S +').value // => null
 * parseBalanceLine('78.42 C') // => null
 */
export function parseBalanceLine(line: string): RawValue | null {
  const text = line.trim();
  if (overload.test(text)) return { name: massName, value: null, unit: 'g' };
  const [, number, unit] = mass.exec(text) ?? [];
  if (number === undefined || unit === undefined) return null;
  const value = Number(number.replace(/\s/g, '').replace(',', '.'));
  return { name: massName, value, unit: unit.toLowerCase() === 'kg' ? 'kg' : 'g' };
}
