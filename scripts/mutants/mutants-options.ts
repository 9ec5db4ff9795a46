import { parseArgs } from 'node:util';
import { fail, type Result, succeed } from '#shared-core';

export const mutantsUsage =
  'Usage: npm run --silent mutants -- FOLDER [--own] [--sample N [--seed S]], as in shared-core/frame --sample 200 --seed 1';

/** How many mutants are drawn by chance, and the seed of the draw. */
export interface MutantSample {
  readonly count: number;
  readonly seed: string;
}

export interface MutantsOptions {
  readonly folder: string;
  /** The folder's own files alone, and the tests beside them: the rooms in it have numbers of their own. */
  readonly isOwn: boolean;
  /** Null: all of them. */
  readonly sample: MutantSample | null;
}

/** The command line of `npm run mutants`, or one sentence about what is wrong with it. */
export function parseMutantsOptions(
  commandLine: readonly string[],
): Result<MutantsOptions, string> {
  try {
    const {
      values: { own: isOwn = false, sample, seed },
      positionals: [folder, stranger],
    } = parseArgs({
      args: [...commandLine],
      options: { own: { type: 'boolean' }, sample: { type: 'string' }, seed: { type: 'string' } },
      allowPositionals: true,
    });
    if (folder === undefined) return fail('Say which folder.');
    if (stranger !== undefined) return fail(`"${stranger}" is not known here.`);
    if (sample === undefined) {
      return seed === undefined
        ? succeed({ folder, isOwn, sample: null })
        : fail('--seed is the seed of a sample: say --sample as well.');
    }
    if (!/^[1-9]\d{0,5}$/.test(sample)) return fail('--sample is a whole number from 1.');
    return succeed({ folder, isOwn, sample: { count: Number(sample), seed: seed ?? '1' } });
  } catch (error) {
    return fail(error instanceof Error ? error.message : String(error));
  }
}
