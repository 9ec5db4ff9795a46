/**
 * Changes the code of a folder in one small way after the other and runs the folder's own tests on each change. A change that no test
 * notices survives, and is printed: either a test is missing, or the code is needless. Numbers of a folder are kept in test/mutants.json.
 * A single file may be given instead of a folder; its numbers are not kept.
 *
 * Ends with one line of JSON: folder, mutants, killed, survived, timedOut, scoreWithoutTimeouts (per cent of all mutants that a test
 * has seen; one that only ran too long counts as not seen). The first time, the mutation tool is installed into .build/.
 *
 * Usage: npm run --silent mutants -- FOLDER
 */
import { statSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { keepTally } from './mutants/keep-tally.ts';
import { provideStryker } from './mutants/provide-stryker.ts';
import { readReport } from './mutants/read-report.ts';
import { runStryker } from './mutants/run-stryker.ts';
import { scopeOf } from './mutants/scope.ts';
import { describeSurvivor, tally } from './mutants/tally.ts';
import { projectRoot } from './testing/step.ts';

const usage = 'Usage: npm run --silent mutants -- FOLDER, as in shared-core/frame';
const [asked, stranger] = process.argv.slice(2);
if (asked === undefined || stranger !== undefined || asked.startsWith('-')) {
  const unknown = stranger ?? asked;
  stop(
    unknown === undefined
      ? `Say which folder. ${usage}`
      : `"${unknown}" is not known here. ${usage}`,
  );
}
const folder = path.relative(projectRoot, path.resolve(asked)).replaceAll(path.sep, '/');
const found = statSync(path.join(projectRoot, folder), { throwIfNoEntry: false });
const scope = found === undefined ? null : scopeOf(folder, found.isDirectory());
if (scope === null) stop(`There is no folder "${asked}" in shared-core or main. ${usage}`);

const stryker = await provideStryker((line) => console.error(line));
if (stryker === null) process.exit(1);
const reportFile = await runStryker(stryker, scope);
if (reportFile === null) {
  console.error('The mutation tool gave up; what it printed is above.');
  process.exit(1);
}
const report = readReport(reportFile);
for (const survivor of report.filter(({ verdict }) => verdict !== 'killed'))
  console.log(describeSurvivor(survivor));
const sum = tally(folder, report);
if (scope.isFolder) keepTally(sum, new Date());
console.log(JSON.stringify(sum));

function stop(why: string): never {
  console.error(why);
  process.exit(2);
}
