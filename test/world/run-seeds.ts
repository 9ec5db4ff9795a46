import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { SeedOutcome } from './seed-worker.ts';

const worker = fileURLToPath(new URL('seed-worker.ts', import.meta.url));

/** Runs the world of each seed once, as many at a time as there are workers, and tells of each as it ends. */
export async function runSeeds(
  seeds: readonly number[],
  workers: number,
  tell: (outcome: SeedOutcome) => void,
): Promise<void> {
  const waiting = [...seeds];
  const runAll = async (child: ChildProcess): Promise<void> => {
    for (let seed = waiting.shift(); seed !== undefined; seed = waiting.shift()) {
      tell(await runOne(child, seed));
    }
    child.disconnect();
  };
  const started = Array.from({ length: Math.min(workers, seeds.length) }, () =>
    fork(worker, { execArgv: ['--import', 'tsx'] }),
  );
  await Promise.all(started.map(runAll));
}

function runOne(child: ChildProcess, seed: number): Promise<SeedOutcome> {
  return new Promise((resolve, reject) => {
    const ended = (code: number | null) =>
      reject(new Error(`The world of seed ${seed} ended its process (${code}).`));
    child.once('exit', ended);
    child.once('message', (outcome: SeedOutcome) => {
      child.off('exit', ended);
      resolve(outcome);
    });
    child.send(seed);
  });
}
