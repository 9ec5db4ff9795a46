import type { Step, StepOutcome } from './step.ts';

export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** Runs steps in order, at most `atOnce` together, and reports each as it ends. */
export async function runSteps(
  steps: readonly Step[],
  atOnce: number,
  report: (line: string) => void,
): Promise<Tally> {
  const waiting = [...steps];
  let tally: Tally = { passed: 0, failed: 0 };
  async function work(): Promise<void> {
    for (let step = waiting.shift(); step !== undefined; step = waiting.shift()) {
      const outcome = await step.run();
      tally = {
        passed: tally.passed + outcome.passed,
        failed: tally.failed + outcome.failed,
      };
      report(stepLine(step.name, outcome));
      if (outcome.failed > 0) report(outcome.output.trimEnd());
    }
  }
  await Promise.all(Array.from({ length: atOnce }, work));
  return tally;
}

/** One line a step: `ok  types of main (3.1 s)`. */
export function stepLine(name: string, { passed, failed, tookS }: StepOutcome): string {
  const counts = passed + failed > 1 ? `, ${passed} passed, ${failed} failed` : '';
  return `${failed === 0 ? 'ok    ' : 'FAILED'} ${name} (${tookS.toFixed(1)} s${counts})`;
}
