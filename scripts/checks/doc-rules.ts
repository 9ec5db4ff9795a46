/** What a docstring must hold. */
export type DocElement = 'description' | 'equation' | 'units' | 'range' | 'source' | 'example';

/** Physics: a formula without a source and a check value is a rumour. */
const physics: readonly DocElement[] = [
  'description',
  'equation',
  'units',
  'range',
  'source',
  'example',
];
const plain: readonly DocElement[] = ['description'];

/** The rule for each folder of shared-core; folders not named here need a description. */
const rulesByFolder: Readonly<Record<string, readonly DocElement[]>> = {
  alcoholometry: physics,
  atmosphere: physics,
  bookkeeping: physics,
  column: physics,
  equilibrium: physics,
  ferment: physics,
  planning: physics,
  probe: physics,
  thermo: physics,
};

/** The elements that functions in this folder of shared-core must document. */
export function docRuleFor(folder: string): readonly DocElement[] {
  return rulesByFolder[folder] ?? plain;
}

/** How people are told what is missing. */
export const missingWording: Readonly<Record<DocElement, string>> = {
  description: 'has no description (say what it computes)',
  equation: 'shows no equation (write it, or name the method that is solved)',
  units: 'leaves the unit open of',
  range: 'states no valid range of its arguments',
  source: 'names no source (a line "Source: …" or @see)',
  example: 'has no @example',
};

/**
 * Endings that say the unit of a parameter; longer endings such as `JPerMol` are caught by `Per`.
 * Pure numbers say what they count or compare.
 */
const unitEndings =
  /(?:C|K|KPa|HPa|Pa|Mmhg|M|Mm|M2|M3|Km|S|Min|H|Hz|Ms|Ml|L|G|Kg|Mg|Mol|W|J|Kj|V|Mv|Ohm|Bits|Percent|Abv|Per[A-Z][A-Za-z0-9]*)$/;
const unitWords =
  /^(?:seconds|minutes|hours|metres|kelvin|ohm|percent)$|(?:Fractions?|Ratio|Count|Index|Probability|Number|Factor|Efficiency|Gravity|Plates|Level|Byte|Raw)$/i;

/** True when the name alone tells the unit: `temperatureC`, `ethanolMoleFraction`, `plateCount`. */
export function namesItsUnit(name: string): boolean {
  return unitEndings.test(name) || unitWords.test(name);
}
