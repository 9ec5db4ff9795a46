import ts from 'typescript';
import { isSayer, lineOf, parseFile } from './texts.ts';

/** A sentence that is said somewhere, and in what way. */
export interface SaidSentence {
  readonly file: string;
  readonly line: number;
  /** Null where it is not a literal, so that nobody can find it. */
  readonly sentence: string | null;
}

/** Every sentence a file says: the first argument of `say` and `worded`, the `sentence` of `<Say>`. */
export function saidSentences(file: string, text: string): readonly SaidSentence[] {
  const source = parseFile(file, text);
  const found: SaidSentence[] = [];
  const visit = (node: ts.Node): void => {
    if (isSayer(node)) {
      const said = ts.isCallExpression(node) ? node.arguments[0] : sentenceOf(node);
      found.push({ file, line: lineOf(node), sentence: literalOf(said) });
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
