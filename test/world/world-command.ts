/**
 * Runs whole worlds of an hour, one seed after the other, and ends with one line of JSON; exit code 1 on a violation. The first one
 * found is told with the commit it was found at and the faults it needs.
 *
 * Usage: npm run --silent world -- --seeds N [--seed S]
 */
import { spawnSync } from 'node:child_process';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { shrinkFaults } from './fault.ts';
import { runWorld, type WorldOutcome } from './run-world.ts';

const values = readOptions();
const seeds = Number(values?.seeds);
const firstSeed = Number(values?.seed);
if (values?.help === true) {
  console.log(
    'Runs simulated worlds of one hour each, drawn from seeds, and ends with one line of JSON.\n\n' +
      'Usage: npm run --silent world -- --seeds N [--seed S]',
  );
  process.exit(0);
}
if (!Number.isSafeInteger(seeds) || seeds < 1 || !Number.isSafeInteger(firstSeed)) {
  console.error('Say how many worlds: npm run world -- --seeds N [--seed S], both whole numbers.');
  process.exit(2);
}

function readOptions() {
  try {
    return parseArgs({
      options: {
        seeds: { type: 'string', default: '10' },
        seed: { type: 'string', default: '1' },
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

async function explain(seed: number, { faults, violation }: WorldOutcome): Promise<void> {
  console.log(`Seed ${seed} at commit ${commit()}: ${JSON.stringify(violation)}`);
  const fewest = await shrinkFaults(faults, async (fewer) => {
    const again = await runWorld({ seed, faults: fewer });
    return again.violation?.invariant === violation?.invariant;
  });
  console.log(`Needs ${fewest.length} of ${faults.length} faults: ${JSON.stringify(fewest)}`);
}

const startedMs = performance.now();
let simulatedS = 0;
let violations = 0;
let first: { readonly seed: number; readonly invariant: string } | null = null;
for (let seed = firstSeed; seed < firstSeed + seeds; seed += 1) {
  const outcome = await runWorld({ seed });
  simulatedS += outcome.simulatedS;
  if (outcome.violation === null) continue;
  violations += 1;
  if (first === null) await explain(seed, outcome);
  else console.log(`Seed ${seed}: ${JSON.stringify(outcome.violation)}`);
  first ??= { seed, invariant: outcome.violation.invariant };
}
const wallS = Math.round(performance.now() - startedMs) / 1000;
console.log(
  JSON.stringify({ seeds, violations, simulatedS: Math.round(simulatedS), wallS, first }),
);
process.exitCode = violations === 0 ? 0 : 1;
