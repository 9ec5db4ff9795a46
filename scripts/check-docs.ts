/**
 * Checks the docstring of every function that shared-core exports and runs every example in it.
 *
 * Usage: npx tsx scripts/check-docs.ts [FOLDER …]   (folders of shared-core; all without one)
 */
import path from 'node:path';
import process from 'node:process';
import * as sharedCore from '#shared-core';
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

export interface DocsSubject {
  /** The file whose export lines make the public surface. */
  readonly indexFile: string;
  /** The same surface, loaded: what names in examples mean. */
  readonly module: Readonly<Record<string, unknown>>;
  /** Only these folders; all when left out. */
  readonly folders?: readonly string[];
}

export async function checkDocs(subject: DocsSubject): Promise<DocsReport> {
  const { indexFile, module, folders = [] } = subject;
  const functions = exportedFunctions(indexFile).filter(
    ({ folder }) => folders.length === 0 || folders.includes(folder),
  );
  const failures: string[] = [];
  let examplesPassed = 0;
  let examplesFailed = 0;
  for (const found of functions) {
    const file = path.relative(process.cwd(), found.file);
    failures.push(...missingElements(found).map((text) => `${file}:${found.line}: ${text}`));
    for (const example of found.examples) {
      for (const { line, problem } of await runExample(example, module)) {
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

/** The public surface of this project. */
export function sharedCoreSubject(folders: readonly string[] = []): DocsSubject {
  const indexFile = path.join(import.meta.dirname, '..', 'shared-core', 'index.ts');
  return { indexFile, module: sharedCore, folders };
}

if (isEntryPoint(import.meta.url)) {
  const report = await checkDocs(sharedCoreSubject(process.argv.slice(2)));
  for (const failure of report.failures) console.error(failure);
  console.log(
    `${report.functionCount} functions: ${report.failures.length} problems, ` +
      `${report.examplesPassed} examples passed, ${report.examplesFailed} failed`,
  );
  process.exitCode = report.failures.length === 0 ? 0 : 1;
}
