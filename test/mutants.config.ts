import path from 'node:path';
import process from 'node:process';
import { defineConfig } from 'vitest/config';
import { type KeptKind, keepWorker } from './support/kept-worker.ts';
import { ShortestFirst } from './support/shortest-first.ts';

/** What is kept from one mutant to the next; without it each gets a new thread. */
const kept = process.env.MUTANTS_KEPT as KeptKind | undefined;
const keptWorker = kept && keepWorker(kept);

/** What `npm run mutants` runs for every mutant: the tests it names, in the copy of the project it works on. */
export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  plugins: [
    {
      name: 'kept-worker',
      configureVitest({ project }) {
        if (keptWorker === undefined) return;
        // The mutation tool asks for Vitest's own threads, whatever stands here.
        Object.assign(project.config, { pool: keptWorker.name, poolRunner: keptWorker });
      },
    },
  ],
  test: {
    include: JSON.parse(process.env.MUTANTS_TESTS ?? '[]'),
    exclude: ['**/node_modules/**', ...JSON.parse(process.env.MUTANTS_LEFT_OUT ?? '[]')],
    setupFiles: ['test/support/no-mutant-while-collecting.ts'],
    isolate: kept === undefined,
    fileParallelism: false,
    sequence: { sequencer: ShortestFirst },
    // A mutant that makes a test slow is no failure of the test: the mutation tool has its own time-out.
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
