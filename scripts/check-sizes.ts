/**
 * Checks that files stay short (median ≤ 80 lines, 90 % ≤ 250, none over 400; tests ≤ 600), that functions of the
 * monitor do (≤ 40 lines; ≤ 80 where they hold others), and that every `index.ts` holds export lines only.
 *
 * Usage: npx tsx scripts/check-sizes.ts
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import ts from 'typescript';
import { functionLines } from './checks/function-lines.ts';
import { isEntryPoint } from './checks/is-entry-point.ts';

/** Lines allowed. */
export const sizeLimits = {
  median: 80,
  ninetyPercent: 250,
  largest: 400,
  largestTest: 600,
  /** In the monitor, of which every part must be seen through at once. */
  largestFunction: 40,
  largestClosure: 80,
} as const;

const monitorFolders = ['shared-core/monitor/', 'shared-core/alarms/'];

const layers = ['shared-core', 'main', 'renderer', 'app', 'scripts', 'test'];
const sourceFile = /\.(ts|tsx|mjs|css)$/;
const skippedFolders = new Set(['node_modules', '.build', 'reference']);

export interface SourceFile {
  /** Relative to the project, with forward slashes. */
  readonly file: string;
  readonly text: string;
}

export interface SizesReport {
  readonly fileCount: number;
  readonly medianLines: number;
  readonly ninetyPercentLines: number;
  readonly failures: readonly string[];
}

/** Every source file of the layers under `root`. */
export function readSourceFiles(root: string): readonly SourceFile[] {
  return layers.flatMap((layer) => walk(root, layer));
}

function walk(root: string, folder: string): readonly SourceFile[] {
  return readdirSync(path.join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const file = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return skippedFolders.has(entry.name) ? [] : walk(root, file);
    if (!entry.isFile() || !sourceFile.test(entry.name)) return [];
    return [{ file, text: readFileSync(path.join(root, file), 'utf8') }];
  });
}

export function checkSizes(files: readonly SourceFile[]): SizesReport {
  const isTest = ({ file }: SourceFile) => file.startsWith('test/');
  const sources = files.filter((found) => !isTest(found));
  const sorted = sources.map(lineCount).sort((a, b) => a - b);
  const medianLines = quantile(sorted, 0.5);
  const ninetyPercentLines = quantile(sorted, 0.9);
  const tooLong = files.flatMap((found) => {
    const limit = isTest(found) ? sizeLimits.largestTest : sizeLimits.largest;
    const lines = lineCount(found);
    return lines > limit ? [`${found.file}:${lines}: ${lines} lines, at most ${limit}`] : [];
  });
  const spread = [
    ...(medianLines > sizeLimits.median
      ? [`the median file has ${medianLines} lines, at most ${sizeLimits.median}`]
      : []),
    ...(ninetyPercentLines > sizeLimits.ninetyPercent
      ? [`one file in ten is over ${ninetyPercentLines} lines, at most ${sizeLimits.ninetyPercent}`]
      : []),
  ];
  const failures = [
    ...tooLong,
    ...spread,
    ...files.filter(isOfMonitor).flatMap(longFunctions),
    ...files.filter(isIndex).flatMap(nonExportLines),
  ];
  return { fileCount: files.length, medianLines, ninetyPercentLines, failures };
}

function isOfMonitor({ file }: SourceFile): boolean {
  return monitorFolders.some((folder) => file.startsWith(folder));
}

function longFunctions({ file, text }: SourceFile): readonly string[] {
  return functionLines(file, text).flatMap(({ name, line, lines, isClosure }) => {
    const limit = isClosure ? sizeLimits.largestClosure : sizeLimits.largestFunction;
    return lines > limit ? [`${file}:${line}: ${name} has ${lines} lines, at most ${limit}`] : [];
  });
}

function isIndex({ file }: SourceFile): boolean {
  return path.posix.basename(file) === 'index.ts';
}

function nonExportLines({ file, text }: SourceFile): readonly string[] {
  const parsed = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022);
  return parsed.statements
    .filter((statement) => !ts.isExportDeclaration(statement))
    .map((statement) => {
      const { line } = parsed.getLineAndCharacterOfPosition(statement.getStart(parsed));
      return `${file}:${line + 1}: an index.ts holds "export … from" lines only`;
    });
}

function lineCount({ text }: SourceFile): number {
  return text.replace(/\n$/, '').split('\n').length;
}

/** The smallest value that at least this part of the sorted values does not exceed. */
function quantile(sorted: readonly number[], part: number): number {
  return sorted[Math.max(0, Math.ceil(part * sorted.length) - 1)] ?? 0;
}

if (isEntryPoint(import.meta.url)) {
  const report = checkSizes(readSourceFiles(path.join(import.meta.dirname, '..')));
  for (const failure of report.failures) console.error(failure);
  console.log(
    `${report.fileCount} files: median ${report.medianLines} lines, nine in ten ≤ ` +
      `${report.ninetyPercentLines}, ${report.failures.length} problems`,
  );
  process.exitCode = report.failures.length === 0 ? 0 : 1;
}
