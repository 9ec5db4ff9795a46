/**
 * Runs every series of head temperatures in a folder (CSV: seconds and °C, as in test/reference/real-traces) through the
 * monitor and prints one table. Their plateau is shifted to that of ethanol and water, behind a warm-up that is made up.
 *
 * Usage: npm run real-traces -- FOLDER [--least-strength-abv 80]
 */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { judgeTrace } from './real-traces/judge-trace.ts';
import { traceTable } from './real-traces/trace-table.ts';

const { values, positionals } = readArguments();
const [folder] = positionals;
const leastStrengthAbv = Number(values['least-strength-abv']);
if (folder === undefined || !statSync(folder, { throwIfNoEntry: false })?.isDirectory()) {
  stop('Say which folder holds the series: npm run real-traces -- FOLDER');
}
if (!(leastStrengthAbv >= 40 && leastStrengthAbv <= 95)) {
  stop('--least-strength-abv is a strength from 40 to 95 % vol.');
}
const names = readdirSync(folder)
  .filter((name) => name.toLowerCase().endsWith('.csv'))
  .sort();
if (names.length === 0) stop(`There is no .csv file in "${folder}".`);
const judged = names.map((name) => ({
  name,
  judgement: judgeTrace(readFileSync(path.join(folder, name), 'utf8'), leastStrengthAbv),
}));
for (const line of traceTable(judged)) console.log(line);

function readArguments() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: { 'least-strength-abv': { type: 'string', default: '80' } },
    });
  } catch (error) {
    return stop(error instanceof Error ? error.message : String(error));
  }
}

function stop(words: string): never {
  console.error(words);
  process.exit(2);
}
