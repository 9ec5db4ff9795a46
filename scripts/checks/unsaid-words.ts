import ts from 'typescript';
import { type Text, textsOf } from './texts.ts';

/** Words for people that stand in the code without being said in the language of the window. */
export interface UnsaidWords {
  readonly line: number;
  readonly words: string;
}

/** The same in every language: the program's name, and each language by its own. */
const names = new Set(['Still Head Monitor', 'English', 'Deutsch']);

/** A text with at least one word of a person's language. A lower-case word alone is a name for the machine. */
function isForPeople(text: string): boolean {
  const plain = text.replaceAll('{}', '0').trim();
  if (!/\p{L}\p{Ll}/u.test(plain)) return false;
  if (/^[\w.:/#%*-]+\.(ts|tsx|css|json|html|csv|md|zip|svg|png)$/.test(plain)) return false;
  if (/^(a\[href|T1=|\(prefers-|https?:|#|\.\/|\/|data:|var\(|url\(|calc\()/.test(plain))
    return false;
  if (isUnits(plain) || names.has(plain)) return false;
  return (
    /\p{L}[\p{L}’'-]*[,;:.…]?\s+\S/u.test(plain) ||
    /^[“(·\s]*\p{Lu}\p{Ll}/u.test(plain) ||
    /…$/.test(plain)
  );
}

const units = new Set(
  '°C K K/min baud pH Pa kPa hPa mL mL/min L % vol mass min s h mol mol/mol g kg kg/m³ kJ W Hz cm mm m km MB kB'.split(
    ' ',
  ),
);

function isUnits(text: string): boolean {
  return text.split(/[\s±×·–,()=\d]+/).every((word) => word === '' || units.has(word));
}

/** A word alone between tags, or one of two within a sentence, is no name. */
function isShownWord({ node, words }: Text): boolean {
  const text = words.trim();
  if (!/\p{L}\p{Ll}/u.test(text) || isUnits(text) || names.has(text)) return false;
  if (ts.isJsxText(node)) return true;
  let { parent } = node as { parent: ts.Node };
  if (!ts.isConditionalExpression(parent)) return false;
  while (ts.isConditionalExpression(parent) || ts.isParenthesizedExpression(parent)) {
    parent = parent.parent;
  }
  if (ts.isTemplateSpan(parent)) return true;
  return ts.isJsxExpression(parent) && !ts.isJsxAttribute(parent.parent);
}

export function unsaidWords(file: string, text: string): readonly UnsaidWords[] {
  return textsOf(file, text)
    .filter((one) => one.kind === 'other' && (isForPeople(one.words) || isShownWord(one)))
    .map(({ line, words }) => ({ line, words: words.trim() }));
}
