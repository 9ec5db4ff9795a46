import { readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';

/** One name that a file takes from another; `*` is the whole module. */
export interface Use {
  /** Both relative to the project, with forward slashes. */
  readonly from: string;
  readonly to: string;
  readonly name: string;
}

/** Names under which package.json lets a layer be imported. */
const layerFaces: Readonly<Record<string, string>> = {
  '#shared-core': 'shared-core/index.ts',
  '#main': 'main/index.ts',
};

/** Every name that these files take from files of the project: imports, re-exports, `import()`, types, workers by their address. */
export function usesOf(root: string, files: readonly string[]): readonly Use[] {
  return files.flatMap((from) => {
    const text = readFileSync(path.join(root, from), 'utf8');
    const source = ts.createSourceFile(from, text, ts.ScriptTarget.ES2022, true);
    const uses: Use[] = [];
    const take = (specifier: ts.Node | undefined, names: readonly string[]) => {
      const to = specifier && ts.isStringLiteral(specifier) && target(from, specifier.text);
      if (to) uses.push(...names.map((name) => ({ from, to, name })));
    };
    const visit = (node: ts.Node): void => {
      if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
        take(node.moduleSpecifier, namesTaken(node));
      } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
        take(node.argument.literal, [node.qualifier?.getText() ?? '*']);
      } else if (
        (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) ||
        // A worker: `new URL('./worker.ts', import.meta.url)`.
        (ts.isNewExpression(node) && node.expression.getText() === 'URL')
      ) {
        take(node.arguments?.[0], ['*']);
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
    return uses;
  });
}

function target(from: string, specifier: string): string | undefined {
  if (!specifier.startsWith('.')) return layerFaces[specifier];
  return path.posix.join(path.posix.dirname(from), specifier);
}

function namesTaken(node: ts.ImportDeclaration | ts.ExportDeclaration): readonly string[] {
  const clause = ts.isImportDeclaration(node)
    ? node.importClause?.namedBindings
    : node.exportClause;
  if (clause === undefined || !(ts.isNamedImports(clause) || ts.isNamedExports(clause))) {
    return ['*'];
  }
  return clause.elements.map(({ propertyName, name }) => (propertyName ?? name).text);
}
