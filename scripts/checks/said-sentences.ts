import ts from 'typescript';
import { parseFile } from './unsaid-words.ts';

/** A sentence that is said somewhere, and in what way. */
export interface SaidSentence {
  readonly file: string;
  readonly line: number;
  /** Null where it is not a literal, so that nobody can find it. */
  readonly sentence: string | null;
}

const sayers = new Set(['say', 'worded']);

/** Every sentence a file says: the first argument of `say` and `worded`, the `sentence` of `<Say>`. */
export function saidSentences(file: string, text: string): readonly SaidSentence[] {
  const source = parseFile(file, text);
  const found: SaidSentence[] = [];
  const add = (node: ts.Node, said: ts.Expression | undefined): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
    found.push({ file, line, sentence: literalOf(said) });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && sayers.has(node.expression.getText(source))) {
      add(node, node.arguments[0]);
    }
    if (ts.isJsxSelfClosingElement(node) && node.tagName.getText(source) === 'Say') {
      add(node, sentenceOf(node));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function sentenceOf({ attributes }: ts.JsxSelfClosingElement): ts.Expression | undefined {
  for (const attribute of attributes.properties) {
    if (!ts.isJsxAttribute(attribute) || attribute.name.getText() !== 'sentence') continue;
    const { initializer } = attribute;
    if (initializer && ts.isStringLiteral(initializer)) return initializer;
    if (initializer && ts.isJsxExpression(initializer)) return initializer.expression;
  }
  return undefined;
}

function literalOf(node: ts.Expression | undefined): string | null {
  return node !== undefined && ts.isStringLiteralLike(node) ? node.text : null;
}
