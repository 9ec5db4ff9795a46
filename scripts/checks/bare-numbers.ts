import ts from 'typescript';
import { lineOf, partsOf, textsOf } from './texts.ts';

/** A number with a unit that stands as such in a text for people, with nothing beside it that says where it comes from. */
export interface BareNumber {
  readonly line: number;
  readonly words: string;
}

const units =
  '°C|K/kPa|K/min|K|kPa|hPa|% vol|% mass|%|kg/m³|mL/min|mL|L|kg|mg|g|kJ/mol|J/mL|kJ|J|W|mol|km|cm|mm|m|Hz|Ω|ohm|min|s|h|' +
  'seconds?|minutes?|hours?|days?|drops?';
/** Parts of other numbers, of names and of formulas are none. A sign of percent without a space belongs to a style. */
const numberWithUnit = new RegExp(
  `(?<![\\w.,·/×=–+−-])[−-]?\\d[\\d.,]*(?:(?:–| to | and )\\d[\\d.,]*)?[\\s\\u00a0](?:${units})(?![\\w/·×])`,
  'g',
);

/** Agreed numbers that need no source at each place; the work that agreed on each stands beside it. */
export const conventions: Readonly<Record<string, string>> = {
  '20 °C': 'reference temperature of strength and volume: OIML R 22 (1975)',
  '101.325 kPa': 'standard atmosphere: ISO 2533:1975',
  '101,325 kPa': 'the same, as it is written in German',
  '95 %': 'coverage of an interval: JCGM 100:2008, 6.2',
  '90 %': 'the same, of the judge of ferments',
  '100 %': 'the whole',
  '0 °C': 'nominal resistance of a platinum sensor: IEC 60751',
};

const sourceWords =
  /\bSources?:|\bcommon practice\b|\bno source\b|\bfrom memory\b|\b(IEC|ISO|OIML|JCGM|NIST|IAPWS)\b|@see\b/i;

/** The bare numbers in the texts of a TypeScript file: literals, the fixed parts of templates, words between tags. */
export function bareNumbersInCode(file: string, text: string): readonly BareNumber[] {
  return textsOf(file, text)
    .flatMap(({ node }) => partsOf(node))
    .filter((part) => !sourceWords.test(part.text))
    .flatMap((part) => numbersIn(part.text).map((words) => ({ part, words })))
    .filter(({ part }) => !hasSource(part))
    .map(({ part, words }) => ({ line: lineOf(part), words }));
}

/** The bare numbers of a page for people; a computed one stands there as a name in double braces. */
export function bareNumbersInPage(text: string): readonly BareNumber[] {
  return text
    .split('\n')
    .flatMap((row, index) => numbersIn(row).map((words) => ({ line: index + 1, words })));
}

function numbersIn(text: string): readonly string[] {
  return [...text.matchAll(numberWithUnit)]
    .map(([words]) => words.replaceAll('\u00a0', ' ').trim())
    .filter((words) => conventions[words] === undefined);
}

/** A comment that names a source on the line, or before whatever holds the text, up to the function it stands in. */
function hasSource(node: ts.Node): boolean {
  const source = node.getSourceFile();
  const { text } = source;
  const lineEnd = text.indexOf('\n', node.getEnd());
  const rest = text.slice(node.getEnd(), lineEnd === -1 ? text.length : lineEnd);
  if (/\/\/.*/.test(rest) && sourceWords.test(rest)) return true;
  for (let at: ts.Node = node; at !== source && !ts.isFunctionLike(at); at = at.parent) {
    const comments = ts.getLeadingCommentRanges(text, at.getFullStart()) ?? [];
    if (comments.some(({ pos, end }) => sourceWords.test(text.slice(pos, end)))) return true;
  }
  return false;
}
