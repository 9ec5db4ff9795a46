import { existsSync } from 'node:fs';
import path from 'node:path';
import { projectRoot } from '../testing/step.ts';

/** What is changed, and what must notice it. */
export interface MutantScope {
  readonly folder: string;
  readonly isFolder: boolean;
  readonly mutate: string;
  readonly tests: readonly string[];
  readonly leftOut: readonly string[];
  /** Whether one thread may run the tests of all mutants. */
  readonly keepsThread: boolean;
}

/** Rooms of shared-core with a table that is worked out once and kept: a mutant's table would be there for the next mutant. */
const remembering = ['shared-core/column', 'shared-core/equilibrium', 'shared-core/twin'];

/** Rooms of main that keep nothing outside what they create, and whose tests end everything they begin. */
const unremembering = ['main/recorder', 'main/run-library'];

/** Too long for each mutant, or in another process, where no mutant is. */
const leftOut = [
  'test/shared-core/ferment/hourly-ferments.test.ts',
  'test/shared-core/frame/fuzz.test.ts',
  'test/shared-core/run-log/decode-record.test.ts',
  'test/shared-core/monitor/call/adding-an-alarm.test.ts',
];

/** The scope of a folder or file of shared-core or main; null for any other. Its tests stand at the same path under `test`. */
export function scopeOf(folder: string, isFolder: boolean): MutantScope | null {
  if (!/^(shared-core|main)(\/|$)/.test(folder)) return null;
  const isMirrored = (tested: string) => existsSync(path.join(projectRoot, 'test', tested));
  let tested = isFolder ? folder : path.posix.dirname(folder);
  while (!isMirrored(tested)) tested = path.posix.dirname(tested);
  const isInOne = (room: string) => `${folder}/`.startsWith(`${room}/`);
  return {
    folder,
    isFolder,
    mutate: isFolder ? `${folder}/**/*.ts` : folder,
    tests: [`test/${tested}/**/*.test.ts`, `test/${tested}.test.ts`],
    leftOut,
    keepsThread:
      unremembering.some(isInOne) ||
      (isInOne('shared-core') && folder !== 'shared-core' && !remembering.some(isInOne)),
  };
}
