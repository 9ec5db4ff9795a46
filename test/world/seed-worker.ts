/** Runs the worlds of the seeds it is sent, one after the other, in a process of its own. */
import process from 'node:process';
import type { Violation } from './judge.ts';
import { runWorld } from './run-world.ts';

/** What becomes of one seed. */
export interface SeedOutcome {
  readonly seed: number;
  readonly simulatedS: number;
  readonly violation: Violation | null;
}

process.on('message', (seed: number) => {
  void outcomeOf(seed).then((outcome) => process.send?.(outcome));
});

/** A world that breaks off by an error is one that did not come back. */
async function outcomeOf(seed: number): Promise<SeedOutcome> {
  try {
    const { simulatedS, violation } = await runWorld({ seed });
    return { seed, simulatedS, violation };
  } catch (error) {
    const found = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return {
      seed,
      simulatedS: 0,
      violation: { invariant: 'program-comes-back', atS: 0, found },
    };
  }
}
