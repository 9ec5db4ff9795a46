import { createHash } from 'node:crypto';
import process from 'node:process';

/**
 * Draws by chance, without putting back: those whose digest with the seed is lowest. Each is as likely as any other, whatever order they
 * are asked about in.
 *
 * @param {readonly string[]} ids
 * @param {{ count: number, seed: string }} sample
 * @returns {ReadonlySet<string>}
 */
export function draw(ids, { count, seed }) {
  const ranked = ids.map((id) => ({
    id,
    rank: createHash('sha256').update(`${seed}/${id}`).digest('hex'),
  }));
  ranked.sort((a, b) => (a.rank < b.rank ? -1 : 1));
  return new Set(ranked.slice(0, count).map(({ id }) => id));
}

/**
 * The mutation tool asks a checker about all mutants that would get a verdict, at once and before it tests the first of them; what is
 * refused ends as a compile error in the report. Ranges of lines would draw what is nested in a mutant as well.
 */
function createSample(sample = JSON.parse(process.env.MUTANTS_SAMPLE ?? 'null')) {
  return {
    init: async () => {},
    group: async (/** @type {readonly { id: string }[]} */ mutants) =>
      mutants.length === 0 ? [] : [mutants.map(({ id }) => id)],
    check: async (/** @type {readonly { id: string }[]} */ mutants) => {
      const drawn = draw(
        mutants.map(({ id }) => id),
        sample,
      );
      return Object.fromEntries(
        mutants.map(({ id }) => [
          id,
          drawn.has(id) ? { status: 'passed' } : { status: 'compileError', reason: 'not drawn' },
        ]),
      );
    },
  };
}
createSample.inject = /** @type {const} */ ([]);

export const strykerPlugins = [{ kind: 'Checker', name: 'sample', factory: createSample }];
