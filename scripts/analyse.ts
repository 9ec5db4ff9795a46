/**
 * Runs the monitor over a recorded temperature curve as if live and prints its verdicts as JSON.
 * Nothing else goes to standard output; what can't be used ends with a sentence and exit code 2.
 *
 * Usage: npm run --silent analyse -- --help
 */
import process from 'node:process';
import { fermentUsage } from './analyse/ferment-analysis.ts';
import { usage } from './analyse/read-arguments.ts';
import { runAnalysis } from './analyse/run-analysis.ts';

// Whoever reads the answer may stop reading, as `head` does; the pack is written all the same.
process.stdout.on('error', () => {});
if (process.argv.includes('--help')) {
  console.log(`${usage}\n\n${fermentUsage}`);
  process.exit(0);
}
const analysed = await runAnalysis(process.argv.slice(2), (json) => process.stdout.write(json));
if (!analysed.ok) {
  console.error(analysed.error);
  process.exitCode = 2;
}
