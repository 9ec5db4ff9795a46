import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { projectRoot } from '../testing/step.ts';
import type { MutantTally } from './tally.ts';

const keptFile = path.join(projectRoot, 'test', 'mutants.json');

const keptSchema = z.record(
  z.string(),
  z.looseObject({
    /** Survivors that no test can kill, and why; written by hand. */
    equivalent: z.array(z.string()).optional(),
  }),
);

/** Puts a folder's numbers into the kept file, in place of older ones; what was explained there stays. */
export function keepTally({ folder, ...numbers }: MutantTally, now: Date): void {
  const kept = keptSchema.parse(JSON.parse(readFileSync(keptFile, 'utf8')));
  kept[folder] = {
    measured: now.toISOString().slice(0, 10),
    ...numbers,
    equivalent: kept[folder]?.equivalent ?? [],
  };
  writeFileSync(keptFile, `${JSON.stringify(sorted(kept), null, 2)}\n`);
}

function sorted<T>(record: Readonly<Record<string, T>>): Record<string, T> {
  return Object.fromEntries(Object.entries(record).toSorted(([a], [b]) => (a < b ? -1 : 1)));
}
