/**
 * Feeds arbitrary byte strings to every parser of probe lines and prints what came of it.
 *
 * Usage: npx tsx scripts/fuzz-frames.ts [STRINGS = 1000000] [SEED = 1]
 */
import process from 'node:process';
import { fuzzFrames, fuzzTargets } from './fuzz/fuzz-frames.ts';

const strings = Number(process.argv[2] ?? 1_000_000);
const seed = Number(process.argv[3] ?? 1);
let failed = 0;
for (const target of fuzzTargets) {
  const report = fuzzFrames(target, { strings, seed });
  failed += report.threw + report.notResynchronised + report.madeUp;
  const heapMb = Math.round(process.memoryUsage().heapUsed / 2 ** 20);
  console.log(`${target.name}: ${JSON.stringify(report)}, heap ${heapMb} MB`);
}
process.exitCode = failed === 0 ? 0 : 1;
