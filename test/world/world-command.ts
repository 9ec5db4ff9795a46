/**
 * Runs whole worlds of an hour, one on each processor, and ends with one line of JSON; exit code 1 on a violation. Each is told as it
 * is found, the one of the lowest seed with the commit it was found at and the faults it needs.
 *
 * Usage: npm run --silent world -- --seeds N [--seed S] [--workers W]
 */
import { spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { shrinkFaults } from './fault.ts';
import { runSeeds } from './run-seeds.ts';
import { runWorld } from './run-world.ts';
import type { SeedOutcome } from './seed-worker.ts';

const usage = 'Usage: npm run --silent world -- --seeds N [--seed S] [--workers W]';
/** In a night's run somebody may want to know how far it is [seeds]. */
const tellsEvery = 100;

const values = readOptions();
const seeds = Number(values?.seeds);
const firstSeed = Number(values?.seed);
const workers = Number(values?.workers);
if (values?.help === true) {
  console.log(
    'Runs simulated worlds of one hour each, drawn from seeds, one on each processor unless told how many, and ends with one line ' +
      `of JSON.\n\n${usage}`,
  );
  process.exit(0);
}
const isCount = (count: number) => Number.isSafeInteger(count) && count >= 1;
if (!isCount(seeds) || !isCount(workers) || !Number.isSafeInteger(firstSeed)) {
  console.error(`Say how many worlds, in whole numbers. ${usage}`);
  process.exit(2);
}

function readOptions() {
  try {
    return parseArgs({
      options: {
        seeds: { type: 'string', default: '10' },
        seed: { type: 'string', default: '1' },
        workers: { type: 'string', default: String(availableParallelism()) },
        help: { type: 'boolean', default: false },
      },
    }).values;
  } catch {
    return null;
  }
}

function commit(): string {
  const { stdout } = spawnSync('git', ['describe', '--always', '--dirty'], { encoding: 'utf8' });
  return stdout?.trim() || 'unknown';
}

async function explain({ seed, violation }: SeedOutcome): Promise<void> {
  console.log(`Seed ${seed} at commit ${commit()}: ${JSON.stringify(violation)}`);
  const { faults } = await runWorld({ seed });
  const fewest = await shrinkFaults(faults, async (fewer) => {
    const again = await runWorld({ seed, faults: fewer });
    return again.violation?.invariant === violation?.invariant;
  });
  console.log(`Needs ${fewest.length} of ${faults.length} faults: ${JSON.stringify(fewest)}`);
}

const startedMs = performance.now();
let simulatedS = 0;
let done = 0;
const violated: SeedOutcome[] = [];
await runSeeds(
  Array.from({ length: seeds }, (_, index) => firstSeed + index),
  workers,
  (outcome) => {
    simulatedS += outcome.simulatedS;
    done += 1;
    if (done % tellsEvery === 0)
      console.error(`${done} of ${seeds} worlds, ${violated.length} violated`);
    if (outcome.violation === null) return;
    violated.push(outcome);
    console.log(`Seed ${outcome.seed}: ${JSON.stringify(outcome.violation)}`);
  },
);
const wallS = Math.round(performance.now() - startedMs) / 1000;
const [lowest] = violated.sort((a, b) => a.seed - b.seed);
const { seed, violation } = lowest ?? {};
if (lowest !== undefined) await explain(lowest);
const first = seed === undefined ? null : { seed, invariant: violation?.invariant };
console.log(
  JSON.stringify({
    seeds,
    violations: violated.length,
    simulatedS: Math.round(simulatedS),
    wallS,
    first,
  }),
);
process.exitCode = violated.length === 0 ? 0 : 1;
