import ts from 'typescript';

/** A function of a source file, with its size. */
export interface FunctionLines {
  readonly name: string;
  /** Where it begins, from 1. */
  readonly line: number;
  readonly lines: number;
  /** True where it holds functions of more than three lines itself, as what makes an object does. */
  readonly isClosure: boolean;
}

const fewestInnerLines = 4;

/** Every function of a source file that has a body in braces. */
export function functionLines(file: string, text: string): readonly FunctionLines[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const lineOf = (position: number): number => source.getLineAndCharacterOfPosition(position).line;
  const linesOf = (node: ts.Node): number => lineOf(node.end) - lineOf(node.getStart(source)) + 1;
  const found: FunctionLines[] = [];

  const holdsFunctions = (node: ts.Node): boolean =>
    ts.forEachChild(
      node,
      (child) =>
        (ts.isFunctionLike(child) && linesOf(child) >= fewestInnerLines) || holdsFunctions(child),
    ) ?? false;

  const visit = (node: ts.Node): void => {
    const body = bodyOf(node);
    if (body !== null) {
      found.push({
        name: nameOf(node),
        line: lineOf(node.getStart(source)) + 1,
        lines: linesOf(body),
        isClosure: holdsFunctions(body),
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function bodyOf(node: ts.Node): ts.Block | null {
  if (!ts.isFunctionLike(node) || !('body' in node)) return null;
  const { body } = node;
  return body !== undefined && ts.isBlock(body) ? body : null;
}

function nameOf(node: ts.Node): string {
  const named = 'name' in node ? node : node.parent;
  if (named !== undefined && 'name' in named) {
    const { name } = named as { readonly name?: ts.Node };
    if (name !== undefined) return name.getText();
  }
  return 'a function';
}
