import ts from 'typescript';

/**
 * What a text is, by the way it is used: a sentence that is said in the language of the window, a name for the machine, or anything
 * else, which a person may come to read.
 */
export type TextKind = 'said' | 'machine' | 'other';

/** A text of a source file: in quotes, as a template, between tags. */
export interface Text {
  readonly node: TextNode;
  readonly line: number;
  /** With `{}` in each of its places. */
  readonly words: string;
  readonly kind: TextKind;
}

export type TextNode =
  | ts.StringLiteral
  | ts.NoSubstitutionTemplateLiteral
  | ts.TemplateExpression
  | ts.JsxText;

/** What says the sentence it is given. */
const sayers = new Set(['say', 'worded']);
/** Attributes whose values no person reads. */
const machineAttributes = new Set([
  ...['className', 'id', 'key', 'href', 'htmlFor', 'type', 'role', 'src', 'rel', 'target', 'name'],
  ...['d', 'points', 'transform', 'viewBox', 'fill', 'stroke', 'style', 'autoComplete', 'mask'],
  ...['weight', 'size', 'tone', 'aria-keyshortcuts', 'aria-live', 'inputMode', 'focusable'],
  ...['strokeDasharray', 'textAnchor', 'dominantBaseline', 'aria-labelledby', 'pattern', 'accept'],
  ...['preserveAspectRatio', 'fontFamily', 'clipPath', 'aria-describedby', 'lang', 'form'],
]);
/** Elements of the page use `name` for the machine; parts of our own show it. */
const isOfThePage = (tag: string): boolean => /^[a-z]/.test(tag);
/** Calls whose texts are names for the machine, or for whoever mends the program. */
const machineCalls = new Set([
  ...['request', 'on', 'addEventListener', 'removeEventListener', 'querySelector', 'matchMedia'],
  ...[
    'querySelectorAll',
    'getElementById',
    'createElement',
    'Error',
    'getItem',
    'setItem',
    'split',
  ],
  ...[
    'includes',
    'startsWith',
    'endsWith',
    'createContext',
    'closest',
    'removeItem',
    'assertNever',
  ],
  ...['RegExp', 'replace', 'replaceAll', 'getContext', 'getPropertyValue', 'setProperty', 'emit'],
  ...['setAttribute', 'getAttribute', 'removeAttribute', 'describe', 'has', 'insertRule'],
]);

/** Every text of a source file, in its order. */
export function textsOf(file: string, text: string): readonly Text[] {
  const source = parseFile(file, text);
  const found: Text[] = [];
  const visit = (node: ts.Node, outer: TextKind): void => {
    const kind = outer === 'other' ? kindOf(node) : outer;
    if (isText(node)) found.push({ node, line: lineOf(node), words: wordsOf(node), kind });
    ts.forEachChild(node, (child) => visit(child, kind));
  };
  visit(source, 'other');
  return found;
}

function kindOf(node: ts.Node): TextKind {
  if (isMachine(node)) return 'machine';
  return isSentence(node) ? 'said' : 'other';
}

/** The sentence itself is said; what is put into its places must be as well. */
function isSentence(node: ts.Node): boolean {
  if (ts.isJsxAttribute(node)) {
    return node.name.getText() === 'sentence' && isSayer(node.parent.parent);
  }
  const { parent } = node;
  return (
    parent !== undefined &&
    ts.isCallExpression(parent) &&
    isSayer(parent) &&
    parent.arguments[0] === node
  );
}

/** A call or an element that says its sentence. */
export function isSayer(node: ts.Node): node is ts.CallExpression | ts.JsxSelfClosingElement {
  if (ts.isCallExpression(node)) return sayers.has(node.expression.getText());
  return ts.isJsxSelfClosingElement(node) && node.tagName.getText() === 'Say';
}

function isText(node: ts.Node): node is TextNode {
  return (
    ts.isStringLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    ts.isTemplateExpression(node) ||
    ts.isJsxText(node)
  );
}

/** The fixed parts of a text, each where it stands. */
export function partsOf(node: TextNode): readonly (ts.LiteralLikeNode | ts.JsxText)[] {
  if (!ts.isTemplateExpression(node)) return [node];
  return [node.head, ...node.templateSpans.map(({ literal }) => literal)];
}

function wordsOf(node: TextNode): string {
  if (ts.isTemplateExpression(node)) {
    return node.head.text + node.templateSpans.map(({ literal }) => `{}${literal.text}`).join('');
  }
  return ts.isJsxText(node) ? node.text.replaceAll(/\s+/g, ' ') : node.text;
}

/** Parts of the code whose texts are names, not words: neither they nor what they hold is for people. */
function isMachine(node: ts.Node): boolean {
  if (ts.isTypeNode(node) && !ts.isExpressionWithTypeArguments(node)) return true;
  if (
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isTypeAliasDeclaration(node)
  )
    return true;
  if (ts.isInterfaceDeclaration(node) || ts.isThrowStatement(node)) return true;
  if (ts.isJsxAttribute(node)) return isMachineAttribute(node);
  if (ts.isCallExpression(node) || ts.isNewExpression(node)) return isMachineCall(node);
  if (ts.isTaggedTemplateExpression(node)) return true;
  const { parent } = node;
  if (parent === undefined) return false;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (ts.isElementAccessExpression(parent) && parent.argumentExpression === node) return true;
  if (ts.isCaseClause(parent) && parent.expression === node) return true;
  return isText(node) && ts.isBinaryExpression(parent) && isComparison(parent.operatorToken.kind);
}

function isMachineAttribute(node: ts.JsxAttribute): boolean {
  const name = node.name.getText();
  if (name.startsWith('data-') || name.startsWith('on')) return name.startsWith('data-');
  if (!machineAttributes.has(name)) return false;
  const tag = node.parent.parent.tagName.getText();
  return name !== 'name' || isOfThePage(tag);
}

function isMachineCall({ expression }: ts.CallExpression | ts.NewExpression): boolean {
  const name = ts.isPropertyAccessExpression(expression)
    ? expression.name.text
    : expression.getText();
  return machineCalls.has(name);
}

function isComparison(kind: ts.SyntaxKind): boolean {
  return (
    kind === ts.SyntaxKind.EqualsEqualsEqualsToken ||
    kind === ts.SyntaxKind.ExclamationEqualsEqualsToken
  );
}

export function parseFile(file: string, text: string): ts.SourceFile {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  return ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true, kind);
}

/** The line on which a part of a file begins, from 1. */
export function lineOf(node: ts.Node): number {
  const source = node.getSourceFile();
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
}
