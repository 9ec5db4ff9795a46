import { availableParallelism } from 'node:os';
import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = path.join(import.meta.dirname, '..');
const journeys = 'test/browser/**/*.test.ts';
const everyTest = 'test/**/*.test.{ts,tsx}';
const neverTests = ['**/node_modules/**', '**/.build/**'];
/** Parts of the window, drawn: they share a document too, which `fresh-window.ts` empties for each file. */
const windowTests = 'test/renderer/**/*.test.tsx';
// No test asserts wall time: a loaded machine is no failure.
const patience = {
  testTimeout: 180_000,
  hookTimeout: 180_000,
  expect: { poll: { timeout: 60_000 } },
};
/** The young of simulated stills die young: with room for them, fewer are carried about before they do [MiB]. */
const execArgv = ['--max-semi-space-size=64'];

/**
 * Files share one graph of modules in each worker, since loading it for every file takes longer than most of them: none may leave
 * behind what another could see. `window`: what draws. `unit`: everything else that needs no browser. `browser`: journeys through the
 * built window in Chromium, each with an app, a folder and a browser of its own.
 */
export default defineConfig({
  root,
  test: {
    // Several files wait half a minute for real time to pass: one worker more than there are cores keeps these at work.
    maxWorkers: availableParallelism() + 1,
    projects: [
      {
        root,
        test: {
          name: 'window',
          include: [windowTests],
          exclude: neverTests,
          environment: 'happy-dom',
          setupFiles: ['test/support/fresh-window.ts'],
          isolate: false,
          execArgv,
          ...patience,
        },
      },
      {
        root,
        test: {
          name: 'unit',
          include: [everyTest],
          exclude: [...neverTests, journeys, windowTests],
          isolate: false,
          execArgv,
          ...patience,
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: [journeys],
          exclude: neverTests,
          globalSetup: ['test/browser/support/build-first.ts'],
          isolate: false,
          execArgv,
          // One a core: a journey mostly waits for its still. In one process with the others, they begin when those have ended.
          maxWorkers: availableParallelism(),
          sequence: { groupOrder: 1 },
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
