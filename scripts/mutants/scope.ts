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
  /** What may run the tests of all mutants; null where each needs a thread of its own. */
  readonly keeps: 'thread' | 'process' | null;
}

/** Rooms of shared-core with a table that is worked out once and kept: a mutant's table would be there for the next mutant. */
const remembering = [
  'shared-core/column',
  'shared-core/equilibrium',
  'shared-core/twin',
  // What texts were made from.
  'shared-core/wording',
];

/** Rooms of main that keep nothing outside what they create, and whose tests end everything they begin. */
const unremembering = [
  'main/clock',
  'main/export',
  'main/ferments',
  'main/file-layer',
  'main/kept-file',
  'main/probe',
  'main/problem-report',
  'main/pseudo-terminal',
  'main/recorder',
  'main/rigs',
  'main/run-library',
  'main/session',
  'main/side-process',
  'main/turns',
  'main/virtual-probe',
];

/** Too long for each mutant, or in another process, where no mutant is. */
const leftOut = [
  'test/shared-core/ferment/hourly-ferments.test.ts',
  'test/shared-core/frame/fuzz.test.ts',
  'test/shared-core/run-log/decode-record.test.ts',
  'test/shared-core/monitor/call/adding-an-alarm.test.ts',
  // Whole weeks judged, and forty runs distilled, again for each mutant; what they come to is seen by hand beside them.
  'test/shared-core/ferment/judge-ferment.test.ts',
  'test/shared-core/exercises/answered-sheets.test.ts',
  // They read the sources, of layers as well that the copy does not hold, or tables that are made while files are loaded.
  'test/shared-core/wording/catalogues.test.ts',
  'test/shared-core/wording/one-clock.test.ts',
  // What is tested runs in processes of their own.
  'test/main/session/continued-run.test.ts',
  'test/main/session/halted-process.test.ts',
  'test/main/session/desk/desk.test.ts',
  'test/main/ferments/warm-week.test.ts',
  'test/main/probe/worker/fork-probe-worker.test.ts',
  // Four seconds of real time for each of three questions; what is asked when is seen beside it.
  'test/main/probe/balance.test.ts',
  // Whole packs gone through once more; every byte of two of them is digested beside.
  'test/main/export/libreoffice.test.ts',
  'test/main/export/tidy-pack.test.ts',
  'test/main/export/still-without-column.test.ts',
  // Whole runs taken in, packed and gone through again; the handlers are seen by quicker tests beside them.
  'test/main/session/exchange.test.ts',
  'test/main/session/stated-later.test.ts',
];

/**
 * The scope of a folder or file of shared-core or main, or of a folder's own files without its rooms; null for any other. Its tests stand
 * at the same path under `test`.
 */
export function scopeOf(folder: string, isFolder: boolean, isOwn = false): MutantScope | null {
  if (!/^(shared-core|main)(\/|$)/.test(folder)) return null;
  const isMirrored = (tested: string) => existsSync(path.join(projectRoot, 'test', tested));
  let tested = isFolder ? folder : path.posix.dirname(folder);
  while (!isMirrored(tested)) tested = path.posix.dirname(tested);
  const below = isOwn ? '' : '**/';
  return {
    folder,
    isFolder,
    mutate: isFolder ? `${folder}/${below}*.ts` : folder,
    tests: [`test/${tested}/${below}*.test.ts`, `test/${tested}.test.ts`],
    leftOut,
    keeps: keptFor(folder),
  };
}

function keptFor(folder: string): MutantScope['keeps'] {
  const isInOne = (room: string) => `${folder}/`.startsWith(`${room}/`);
  if (unremembering.some(isInOne)) return 'process';
  return folder !== 'shared-core' && isInOne('shared-core') && !remembering.some(isInOne)
    ? 'thread'
    : null;
}
