import ts from 'typescript';

/** Words for people that stand in the code without being said in the language of the window. */
export interface UnsaidWords {
  readonly line: number;
  readonly words: string;
}

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

/** The same in every language: the program's name, and each language by its own. */
const names = new Set(['Still Head Monitor', 'English', 'Deutsch']);

/** A text with at least one word of a person's language. A lower-case word alone is a name for the machine. */
export function isForPeople(text: string): boolean {
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

/** Where in a file a text for people stands, by the way it is used. */
export function textNodes(source: ts.SourceFile): readonly TextNode[] {
  const found: TextNode[] = [];
  const visit = (node: ts.Node): void => {
    if (isMachine(node)) return;
    if (isSayer(node)) {
      visitValues(node);
      return;
    }
    if (isText(node) && (isForPeople(fixedText(node)) || isShownWord(node))) found.push(node);
    ts.forEachChild(node, visit);
  };
  /** The sentence itself is said; what is put into its places must be as well. */
  const visitValues = (node: ts.CallExpression | ts.JsxSelfClosingElement): void => {
    if (ts.isCallExpression(node)) for (const value of node.arguments.slice(1)) visit(value);
    else
      for (const attribute of node.attributes.properties) {
        if (attribute.name?.getText(source) !== 'sentence') visit(attribute);
      }
  };
  visit(source);
  return found;
}

/** A call or an element that says its sentence. */
function isSayer(node: ts.Node): node is ts.CallExpression | ts.JsxSelfClosingElement {
  if (ts.isCallExpression(node)) return sayers.has(node.expression.getText());
  return ts.isJsxSelfClosingElement(node) && node.tagName.getText() === 'Say';
}

export type TextNode =
  | ts.StringLiteral
  | ts.NoSubstitutionTemplateLiteral
  | ts.TemplateExpression
  | ts.JsxText;

/** A word alone between tags, or one of two within a sentence, is no name. */
function isShownWord(node: TextNode): boolean {
  const text = fixedText(node).trim();
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

function isText(node: ts.Node): node is TextNode {
  return (
    ts.isStringLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    ts.isTemplateExpression(node) ||
    ts.isJsxText(node)
  );
}

/** A text with `{}` in each of its places. */
export function fixedText(node: TextNode): string {
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

export function unsaidWords(file: string, text: string): readonly UnsaidWords[] {
  const source = parseFile(file, text);
  return textNodes(source).map((node) => ({
    line: source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1,
    words: fixedText(node).trim(),
  }));
}
