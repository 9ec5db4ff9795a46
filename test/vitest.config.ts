import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = path.join(import.meta.dirname, '..');
const journeys = 'test/browser/**/*.test.ts';
const everyTest = 'test/**/*.test.{ts,tsx}';
const neverTests = ['**/node_modules/**', '**/.build/**'];
/** Functions of their arguments, and what the window thinks apart from what it draws: no file can see another. */
const pureTests = ['test/shared-core/**/*.test.ts', 'test/renderer/**/*.test.ts'];
// No test asserts wall time: a loaded machine is no failure.
const patience = { testTimeout: 180_000, hookTimeout: 180_000 };

/**
 * `pure`: tests that share one graph of modules in each worker, since loading it for every file takes longer than most of them.
 * `unit`: everything else that needs no browser, in parallel. `browser`: journeys through the built window in Chromium, one at a
 * time, because each drives a whole app and two cores are all there may be.
 */
export default defineConfig({
  root,
  test: {
    // One worker a core: the rest of this suite only waits. Left to itself one core stays idle.
    maxWorkers: '100%',
    projects: [
      {
        root,
        test: {
          name: 'pure',
          include: pureTests,
          exclude: neverTests,
          isolate: false,
          ...patience,
        },
      },
      {
        root,
        test: {
          name: 'unit',
          include: [everyTest],
          exclude: [...neverTests, journeys, ...pureTests],
          ...patience,
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: [journeys],
          exclude: neverTests,
          fileParallelism: false,
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
