import path from 'node:path';

export interface TestFile {
  readonly file: string;
  /** Files of the project that it names in its imports. */
  readonly imports: ReadonlySet<string>;
  /** How long its tests took when they were last run all together [s]; undefined where that is not known. */
  readonly tookS: number | undefined;
}

export interface NearTests {
  readonly run: readonly string[];
  /** Near as well, but too long to wait for. */
  readonly leftOut: readonly string[];
}

/** Of a test that was never timed [s]. */
const guessedS = 1;

/**
 * The tests that a change touches, the nearest first, as far as they fit in the time: what was changed itself and what stands at the
 * same place under `test/`; then what imports a changed file; then the rest of the same folder. The first kind is never left out.
 */
export function nearTests(
  changed: readonly string[],
  tests: readonly TestFile[],
  budgetS: number,
): NearTests {
  const ranked = tests
    .map((test) => ({ test, rank: Math.min(...changed.map((file) => rankOf(file, test))) }))
    .filter(({ rank }) => rank < Number.POSITIVE_INFINITY)
    .sort((a, b) => a.rank - b.rank || secondsOf(a.test) - secondsOf(b.test));
  const run: string[] = [];
  const leftOut: string[] = [];
  let usedS = 0;
  for (const { test, rank } of ranked) {
    usedS += secondsOf(test);
    (rank === 0 || usedS <= budgetS ? run : leftOut).push(test.file);
  }
  return { run, leftOut };
}

const secondsOf = ({ tookS = guessedS }: TestFile) => tookS;

function rankOf(changed: string, { file, imports }: TestFile): number {
  if (file === changed || withoutEnding(file) === `test/${withoutEnding(changed)}`) return 0;
  if (imports.has(changed)) return 1;
  const folder = path.posix.dirname(changed);
  const mirror = changed.startsWith('test/') ? folder : `test/${folder}`;
  return folder !== '.' && path.posix.dirname(file) === mirror ? 2 : Number.POSITIVE_INFINITY;
}

/** `a/b.test.ts`, `a/b.ts` and `a/b.tsx` all speak of `a/b`. */
function withoutEnding(file: string): string {
  return file.replace(/(\.test)?\.tsx?$/, '');
}
