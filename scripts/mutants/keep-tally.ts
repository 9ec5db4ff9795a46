import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { projectRoot } from '../testing/step.ts';
import type { MutantTally } from './tally.ts';

const keptFile = path.join(projectRoot, 'test', 'mutants.json');

/** In the order in which they are written: an entry that is only read comes out as it was. */
const keptSchema = z.record(
  z.string(),
  z.strictObject({
    measured: z.string().optional(),
    mutants: z.number().optional(),
    killed: z.number().optional(),
    survived: z.number().optional(),
    timedOut: z.number().optional(),
    scoreWithoutTimeouts: z.number().nullable().optional(),
    /** Of a sample: from how many it was drawn, between which scores that of all lies, and the seed of the draw. */
    of: z.number().optional(),
    low: z.number().optional(),
    high: z.number().optional(),
    seed: z.string().optional(),
    /** Survivors that no test can kill, and why; written by hand. */
    equivalent: z.array(z.string()).optional(),
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
