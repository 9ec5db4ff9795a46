import { expect, test } from 'vitest';
import { runCommand } from '../../../scripts/testing/run-command.ts';
import { runSteps, stepLine } from '../../../scripts/testing/run-steps.ts';
import type { StepOutcome } from '../../../scripts/testing/step.ts';

const outcome = (change: Partial<StepOutcome>): StepOutcome => ({
  passed: 1,
  failed: 0,
  output: '',
  tookS: 1,
  ...change,
});

test('steps add up, failures show their output, and no more than asked run at once', async () => {
  let running = 0;
  let most = 0;
  const step = (name: string, result: StepOutcome) => ({
    name,
    async run() {
      running += 1;
      most = Math.max(most, running);
      await Promise.resolve();
      running -= 1;
      return result;
    },
  });
  const lines: string[] = [];
  const tally = await runSteps(
    [
      step('one', outcome({})),
      step('two', outcome({ passed: 4, failed: 2, output: 'why\n' })),
      step('three', outcome({})),
    ],
    2,
    (line) => lines.push(line),
  );
  expect({ tally, most, lines: lines.sort() }).toEqual({
    tally: { passed: 6, failed: 2 },
    most: 2,
    lines: [
      'FAILED two (1.0 s, 4 passed, 2 failed)',
      'ok     one (1.0 s)',
      'ok     three (1.0 s)',
      'why',
    ],
  });
});

test('a step line says how it went and how long it took', () => {
  expect(stepLine('types of main', outcome({ tookS: 3.14 }))).toBe('ok     types of main (3.1 s)');
});

test('a command that cannot start is a failure with the reason, not a crash', async () => {
  const missing = await runCommand('no-such-program-here', [], { cwd: '/' });
  expect(missing).toMatchObject({ code: 127, output: expect.stringContaining('ENOENT') });
});
