import path from 'node:path';
import process from 'node:process';
import { defineConfig } from 'vitest/config';
import { keepThread } from './support/kept-thread.ts';
import { ShortestFirst } from './support/shortest-first.ts';

const keptThread = keepThread();

/** What `npm run mutants` runs for every mutant: the tests it names, in the copy of the project it works on. */
export default defineConfig({
  root: path.join(import.meta.dirname, '..'),
  plugins: [
    {
      name: 'kept-thread',
      configureVitest({ project }) {
        if (process.env.MUTANTS_KEEP_THREAD !== 'yes') return;
        // The mutation tool asks for Vitest's own threads, whatever stands here.
        Object.assign(project.config, { pool: keptThread.name, poolRunner: keptThread });
      },
    },
  ],
  test: {
    include: JSON.parse(process.env.MUTANTS_TESTS ?? '[]'),
    exclude: ['**/node_modules/**', ...JSON.parse(process.env.MUTANTS_LEFT_OUT ?? '[]')],
    setupFiles: ['test/support/no-mutant-while-collecting.ts'],
    isolate: process.env.MUTANTS_KEEP_THREAD !== 'yes',
    fileParallelism: false,
    sequence: { sequencer: ShortestFirst },
    // A mutant that makes a test slow is no failure of the test: the mutation tool has its own time-out.
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
