import { type DocElement, docRuleFor, missingWording, namesItsUnit } from './doc-rules.ts';
import type { ExportedFunction, NumericParameter } from './exported-functions.ts';

/** What the docstring of a function lacks under the rule of its folder, one sentence each. */
export function missingElements(subject: ExportedFunction): readonly string[] {
  return docRuleFor(subject.folder)
    .filter((element) => !present[element](subject))
    .map((element) => `${subject.name} ${missingWording[element]}${namesFor(element, subject)}`);
}

const equationMarks =
  /[=≈∝Σ∫]|\b(equation|polynomial|formula|solve[sd]?|method|rule|table|inverse( of)?|root)\b/i;
const rangeMarks =
  /[≤≥<>…]|\b(valid|range|between|positive|finite|whole number|any)\b|\d\s*(to|–)\s*[-−]?\d/i;

const present: Readonly<Record<DocElement, (subject: ExportedFunction) => boolean>> = {
  description: ({ description }) => description.trim() !== '',
  equation: ({ prose }) => equationMarks.test(prose),
  units: (subject) => unitless(subject).length === 0,
  range: ({ prose, numericParameters }) => numericParameters.length === 0 || rangeMarks.test(prose),
  source: ({ prose }) => /(^|\n)\s*(@source|@see|Sources?:)\s*\S/.test(prose),
  example: ({ examples }) => examples.length > 0,
};

function namesFor(element: DocElement, subject: ExportedFunction): string {
  return element === 'units'
    ? ` ${unitless(subject)
        .map(({ name }) => `"${name}"`)
        .join(', ')} (end the name in a unit or write the unit in brackets)`
    : '';
}

function unitless({ numericParameters, prose }: ExportedFunction): readonly NumericParameter[] {
  return numericParameters.filter(
    ({ name, aliases, ownDoc }) =>
      !namesItsUnit(name) &&
      !hasBracket(ownDoc) &&
      ![name, ...aliases].some((word) => hasBracketAfter(word, prose)),
  );
}

function hasBracket(text: string): boolean {
  return /\[[^\]\n]+\]/.test(text);
}

function hasBracketAfter(name: string, prose: string): boolean {
  return new RegExp(`\\b${name}\\b[^\\n]*?\\[[^\\]\\n]+\\]`).test(prose);
}
