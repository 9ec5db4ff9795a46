const units =
  '°C|K/min|K/h|K|kPa|hPa|mL|kg/m³|mol/mol|kJ/mol|J/\\(mol|mol|%|min|s|h|W|g|m|stages|plates?';
const numberAndUnit = new RegExp(`(\\d\\)?) (?=(?:${units})(?![\\p{L}\\d]))`, 'gu');
const accepted = /accept ±/g;
const equals = /= (?=[−-]?\d)/g;
/** A symbol stands on the line of its value: `R = 8.314`. */
const symbolBefore = /(?<=(?:^|[\s(])\p{L}{1,2}) =\u00a0/gu;

/**
 * A sentence with every number on one line with its unit, by spaces that do not break.
 *
 * @param sentence any text
 *
 * Source: ISO 80000-1, 7.1.4 (a number and its unit belong together); from memory.
 * @example
 * keepUnits('Vapour of 90–96 % vol at 78.3 °C') // => "Vapour of 90–96\u00a0%\u00a0vol at 78.3\u00a0°C"
 */
export function keepUnits(sentence: string): string {
  return sentence
    .replace(numberAndUnit, '$1\u00a0')
    .replaceAll('% vol', '%\u00a0vol')
    .replace(accepted, 'accept\u00a0±')
    .replace(equals, '=\u00a0')
    .replace(symbolBefore, '\u00a0=\u00a0');
}

/**
 * A sentence of the monitor as a person reads it: a number stays on one line with its unit, and has the person's
 * decimal sign. The record keeps the sentence as it was made.
 *
 * @param sentence with decimal points
 * @param decimal the sign wanted
 *
 * Source: this project's rule.
 * @example
 * saidWords('The head is at 78.3 °C.', ',') // => "The head is at 78,3\u00a0°C."
 */
export function saidWords(sentence: string, decimal: '.' | ','): string {
  return inDecimals(keepUnits(sentence), decimal);
}

/**
 * A sentence with its numbers in the decimal sign wanted.
 *
 * @param sentence with decimal points
 * @param decimal the sign wanted
 *
 * Source: this project's rule.
 * @example
 * inDecimals('The head is at 78.3 °C.', ',') // => "The head is at 78,3 °C."
 */
export function inDecimals(sentence: string, decimal: '.' | ','): string {
  return sentence.replace(/(\d)\.(?=\d)/g, `$1${decimal}`);
}
