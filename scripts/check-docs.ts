/**
 * Checks the docstring of every function that a room of shared-core exports, and runs every example in it and in the files
 * behind it.
 *
 * Usage: npx tsx scripts/check-docs.ts [FOLDER …]   (folders of shared-core; all without one)
 */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { exportedFunctions } from './checks/exported-functions.ts';
import { isEntryPoint } from './checks/is-entry-point.ts';
import { missingElements } from './checks/missing-elements.ts';
import { runExample } from './checks/run-example.ts';

export interface DocsReport {
  readonly functionCount: number;
  readonly examplesPassed: number;
  readonly examplesFailed: number;
  /** One line each: `file:line: what is wrong`. */
  readonly failures: readonly string[];
}

type Names = Readonly<Record<string, unknown>>;

export interface DocsSubject {
  readonly root: string;
  /** The files whose exports must be documented: the faces. */
  readonly faces: readonly string[];
  /** Files behind the faces: what they export need not be documented, but an example there must hold. */
  readonly inner?: readonly string[];
  /** What names mean in the examples of a file. */
  readonly names: (file: string) => Names;
  /** Only these folders; all when left out. */
  readonly folders?: readonly string[];
}

export async function checkDocs(subject: DocsSubject): Promise<DocsReport> {
  const { root, faces, inner = [], names, folders = [] } = subject;
  const faced = new Set(exportedFunctions(root, faces).map(place));
  const functions = exportedFunctions(root, [...faces, ...inner]).filter(
    (found) =>
      (faced.has(place(found)) || found.examples.length > 0) &&
      (folders.length === 0 || folders.includes(found.folder)),
  );
  const failures: string[] = [];
  let examplesPassed = 0;
  let examplesFailed = 0;
  for (const found of functions) {
    const file = path.relative(process.cwd(), found.file);
    if (faced.has(place(found))) {
      failures.push(...missingElements(found).map((text) => `${file}:${found.line}: ${text}`));
    }
    for (const example of found.examples) {
      for (const { line, problem } of await runExample(example, names(found.file))) {
        if (problem === undefined) examplesPassed += 1;
        else {
          examplesFailed += 1;
          failures.push(`${file}:${line}: ${problem}`);
        }
      }
    }
  }
  return { functionCount: functions.length, examplesPassed, examplesFailed, failures };
}

function place({ file, line }: { readonly file: string; readonly line: number }): string {
  return `${file}:${line}`;
}

/** The rooms of shared-core; an example may name anything that a file of shared-core exports. */
export async function sharedCoreSubject(folders: readonly string[] = []): Promise<DocsSubject> {
  const root = path.join(import.meta.dirname, '..', 'shared-core');
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => path.join(root, file));
  const modules = new Map<string, Names>();
  for (const file of files) {
    modules.set(file, (await import(pathToFileURL(file).href)) as Names);
  }
  const all: Names = Object.assign({}, ...modules.values());
  const isFace = (file: string) => /^([^/\\]+[/\\])?index\.ts$/.test(path.relative(root, file));
  return {
    root,
    faces: files.filter(isFace),
    inner: files.filter((file) => !isFace(file)),
    names: (file) => ({ ...all, ...modules.get(path.normalize(file)) }),
    folders,
  };
}

if (isEntryPoint(import.meta.url)) {
  const report = await checkDocs(await sharedCoreSubject(process.argv.slice(2)));
  for (const failure of report.failures) console.error(failure);
  console.log(
    `${report.functionCount} functions: ${report.failures.length} problems, ` +
      `${report.examplesPassed} examples passed, ${report.examplesFailed} failed`,
  );
  process.exitCode = report.failures.length === 0 ? 0 : 1;
}
