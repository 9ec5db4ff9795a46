/**
 * Runs every `scripts/bench/*.bench.ts` (or those whose name holds one of the given words), one after the
 * other. Each prints ratios against a reference in the same run, so the computer does not matter.
 *
 * Usage: npm run bench -- [WORD …]
 */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { z } from 'zod';

const benchSchema = z.object({ run: z.custom<() => unknown>((run) => typeof run === 'function') });

const folder = path.join(import.meta.dirname, 'bench');
const words = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => words.length === 0 || words.some((word) => file.includes(word)))
  .sort();

for (const file of files) {
  console.log(`\n${path.basename(file, '.bench.ts')}`);
  const bench = benchSchema.parse(await import(pathToFileURL(path.join(folder, file)).href));
  await bench.run();
}
if (files.length === 0) {
  console.error(`No bench is named like ${words.join(', ')}.`);
  process.exitCode = 1;
}
