import path from 'node:path';
import ts from 'typescript';

/** One function that a module exports, with what its docstring says. */
export interface ExportedFunction {
  readonly name: string;
  readonly file: string;
  readonly line: number;
  /** First folder below the module, or '' for a file beside it. */
  readonly folder: string;
  /** The prose: everything except the examples. */
  readonly prose: string;
  readonly description: string;
  readonly examples: readonly DocExample[];
  readonly numericParameters: readonly NumericParameter[];
}

export interface DocExample {
  readonly text: string;
  /** Where the text starts. */
  readonly line: number;
}

/** A number that a caller must supply, directly or inside an object. */
export interface NumericParameter {
  readonly name: string;
  /** Other names under which the prose may give the unit: the object, when it holds one number. */
  readonly aliases: readonly string[];
  readonly ownDoc: string;
}

/** Every function that one of these files exports, once, in source order; folders are named below `root`. */
export function exportedFunctions(
  root: string,
  files: readonly string[],
): readonly ExportedFunction[] {
  const program = ts.createProgram([...files], compilerOptions(root));
  const checker = program.getTypeChecker();
  const found = files.flatMap((file) => {
    const source = program.getSourceFile(file);
    const module = source && checker.getSymbolAtLocation(source);
    return module ? checker.getExportsOfModule(module) : [];
  });
  const functions = found
    .map((symbol) => describe(symbol, checker, root))
    .filter((one) => one !== undefined);
  // A function may be exported by its room and by the layer.
  return [...new Map(functions.map((one) => [`${one.file}:${one.line}`, one])).values()].sort(
    (a, b) => a.file.localeCompare(b.file) || a.line - b.line,
  );
}

function compilerOptions(root: string): ts.CompilerOptions {
  const configFile = ts.findConfigFile(root, ts.sys.fileExists);
  if (configFile === undefined) return {};
  const { config } = ts.readConfigFile(configFile, ts.sys.readFile);
  return ts.parseJsonConfigFileContent(config, ts.sys, path.dirname(configFile)).options;
}

function describe(
  exported: ts.Symbol,
  checker: ts.TypeChecker,
  root: string,
): ExportedFunction | undefined {
  const symbol =
    exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const declaration = symbol.declarations?.find(isFunctionLike);
  if (declaration === undefined) return undefined;
  const source = declaration.getSourceFile();
  const relative = path.relative(root, source.fileName).split(path.sep);
  const docs = ts.getJSDocCommentsAndTags(declaration).filter(ts.isJSDoc);
  const tags = docs.flatMap((doc) => [...(doc.tags ?? [])]);
  const isExample = (tag: ts.JSDocTag) => tag.tagName.text === 'example';
  const description = docs.map((doc) => textOf(doc.comment)).join('\n');
  return {
    name: exported.name,
    file: source.fileName,
    line: lineOf(source, declaration.getStart(source)),
    folder: relative.length > 1 ? (relative[0] ?? '') : '',
    description,
    prose: [description, ...tags.filter((tag) => !isExample(tag)).map(tagProse)].join('\n'),
    examples: tags.filter(isExample).map((tag) => ({
      text: textOf(tag.comment),
      line: lineOf(source, tag.tagName.end + leading(source.text.slice(tag.tagName.end))),
    })),
    numericParameters: signatureOf(declaration, checker).flatMap((parameter) =>
      numericParts(parameter, declaration, checker),
    ),
  };
}

type FunctionLike = ts.FunctionDeclaration | ts.VariableDeclaration;

function isFunctionLike(node: ts.Node): node is FunctionLike {
  if (ts.isFunctionDeclaration(node)) return true;
  const value = ts.isVariableDeclaration(node) ? node.initializer : undefined;
  return value !== undefined && (ts.isArrowFunction(value) || ts.isFunctionExpression(value));
}

function signatureOf(node: FunctionLike, checker: ts.TypeChecker): readonly ts.Symbol[] {
  const signature = checker.getTypeAtLocation(node).getCallSignatures()[0];
  return signature?.getParameters() ?? [];
}

function numericParts(
  parameter: ts.Symbol,
  at: ts.Node,
  checker: ts.TypeChecker,
): readonly NumericParameter[] {
  const type = checker.getNonNullableType(checker.getTypeOfSymbolAtLocation(parameter, at));
  if (isNumeric(type)) {
    return [{ name: parameter.name, aliases: [], ownDoc: docOf(parameter, checker) }];
  }
  const isList = checker.getIndexTypeOfType(type, ts.IndexKind.Number) !== undefined;
  if (!(type.flags & ts.TypeFlags.Object) || isList) return [];
  const numbers = type
    .getProperties()
    .filter((property) =>
      isNumeric(checker.getNonNullableType(checker.getTypeOfSymbolAtLocation(property, at))),
    );
  const aliases = numbers.length === 1 ? [parameter.name] : [];
  return numbers.map((property) => ({
    name: property.name,
    aliases,
    ownDoc: docOf(property, checker),
  }));
}

/** Plain `number`: a union of literals such as `9 | 10 | 11` is a choice, not a measured quantity. */
function isNumeric(type: ts.Type): boolean {
  return (type.flags & ts.TypeFlags.Number) !== 0;
}

function docOf(symbol: ts.Symbol, checker: ts.TypeChecker): string {
  return ts.displayPartsToString(symbol.getDocumentationComment(checker));
}

function tagProse(tag: ts.JSDocTag): string {
  const subject = ts.isJSDocParameterTag(tag) ? tag.name.getText() : '';
  return `@${tag.tagName.text} ${subject} ${textOf(tag.comment)}`;
}

/** Length of the margin (white space and asterisks) before the text of a tag. */
function leading(afterTag: string): number {
  return afterTag.search(/[^\s*]/);
}

function textOf(comment: ts.JSDoc['comment']): string {
  return ts.getTextOfJSDocComment(comment) ?? '';
}

function lineOf(source: ts.SourceFile, position: number): number {
  return source.getLineAndCharacterOfPosition(position).line + 1;
}
