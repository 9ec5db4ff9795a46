/**
 * Measures the judge of ferments against simulated ones whose kinetics it does not share.
 *
 * Usage: npx tsx scripts/ferments.ts [--runs 500] [--seed 1] [--list]
 */
import process from 'node:process';
import { parseArgs } from 'node:util';
import { scoreFerment } from './ferments/score-ferment.ts';
import { summariseFerments } from './ferments/summarise-ferments.ts';

const { values: options } = parseArgs({
  options: {
    runs: { type: 'string', default: '500' },
    seed: { type: 'string', default: '1' },
    list: { type: 'boolean', default: false },
  },
});
const scores = Array.from({ length: Number(options.runs) }, (_, index) => {
  const score = scoreFerment(options.seed, index);
  if (options.list) console.log(score.line);
  if (process.stderr.isTTY) process.stderr.write(`\r${index + 1} of ${options.runs} ferments`);
  return score;
});
for (const line of summariseFerments(scores)) console.log(line);
