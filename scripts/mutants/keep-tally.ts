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
    mutants: z.number().optional(),
    /** Of a sample: from how many it was drawn. */
    of: z.number().optional(),
  }),
);

type Kept = z.infer<typeof keptSchema>;

/** Puts a folder's numbers into the kept file. */
export function keepTally(tally: MutantTally, now: Date): void {
  const kept = keptSchema.parse(JSON.parse(readFileSync(keptFile, 'utf8')));
  writeFileSync(keptFile, `${JSON.stringify(withTally(kept, tally, now), null, 2)}\n`);
}

/**
 * What is kept, with a folder's new numbers in place of older ones; what was explained there stays, and so do numbers of all mutants when
 * a sample of them was drawn.
 */
export function withTally(kept: Kept, { folder, ...numbers }: MutantTally, now: Date): Kept {
  const { equivalent = [], mutants, of } = kept[folder] ?? {};
  const isOfAll = mutants !== undefined && of === undefined;
  if (isOfAll && numbers.of !== undefined) return kept;
  const measured = now.toISOString().slice(0, 10);
  return sorted({ ...kept, [folder]: { measured, ...numbers, equivalent } });
}

function sorted<T>(record: Readonly<Record<string, T>>): Record<string, T> {
  return Object.fromEntries(Object.entries(record).toSorted(([a], [b]) => (a < b ? -1 : 1)));
}
