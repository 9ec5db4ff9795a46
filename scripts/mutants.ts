/**
 * Changes the code of a folder in one small way after the other and runs the folder's own tests on each change. A change that no test
 * notices survives, and is printed: either a test is missing, or the code is needless. Numbers of a folder are kept in test/mutants.json.
 * A single file may be given instead of a folder; its numbers are not kept. With --own the rooms in the folder are left out, its own tests
 * alone are run. With --sample N only N mutants are tested, drawn by chance.
 *
 * Ends with one line of JSON: folder, mutants, killed, survived, timedOut, scoreWithoutTimeouts (per cent of all mutants that a test
 * has seen; one that only ran too long counts as not seen). Of a sample, all this counts the mutants drawn, and the line says besides:
 * of (how many they were drawn from), low and high (between which the score of all lies with 95 % confidence), seed.
 * The first time, the mutation tool is installed into .build/.
 *
 * Usage: npm run --silent mutants -- FOLDER [--own] [--sample N [--seed S]]
 */
import { statSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { keepTally } from './mutants/keep-tally.ts';
import { mutantsUsage, parseMutantsOptions } from './mutants/mutants-options.ts';
import { provideStryker } from './mutants/provide-stryker.ts';
import { readReport } from './mutants/read-report.ts';
import { runStryker } from './mutants/run-stryker.ts';
import { scopeOf } from './mutants/scope.ts';
import { describeSurvivor, isSurvivor, tally } from './mutants/tally.ts';
import { projectRoot } from './testing/step.ts';

const options = parseMutantsOptions(process.argv.slice(2));
if (!options.ok) stop(options.error);
const { folder: asked, isOwn, sample } = options.value;
const folder = path.relative(projectRoot, path.resolve(asked)).replaceAll(path.sep, '/');
const found = statSync(path.join(projectRoot, folder), { throwIfNoEntry: false });
const scope = found === undefined ? null : scopeOf(folder, found.isDirectory(), isOwn);
if (scope === null) stop(`There is no folder "${asked}" in shared-core or main.`);

const stryker = await provideStryker((line) => console.error(line));
if (stryker === null) process.exit(1);
const reportFile = await runStryker(stryker, scope, sample);
if (reportFile === null) {
  console.error('The mutation tool gave up; what it printed is above.');
  process.exit(1);
}
const report = readReport(reportFile);
for (const mutant of report) if (isSurvivor(mutant)) console.log(describeSurvivor(mutant));
const sum = tally(isOwn ? `${folder}/*` : folder, report, sample);
if (scope.isFolder) keepTally(sum, new Date());
console.log(JSON.stringify(sum));

function stop(why: string): never {
  console.error(`${why}\n${mutantsUsage}`);
  process.exit(2);
}
