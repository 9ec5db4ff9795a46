import { expect, test } from 'vitest';
import { cutErrors, knownRun, volumeReads } from '../../../scripts/ensemble/books-study.ts';

/** Stills whose head is right within what is told of it, so that a strength that misses was weighed wrongly. */
const stills = ['own', 'poor'] as const;
const runsEach = 3;

test('the strength that the books tell of a receiver nobody measured holds the true one, whatever was read of its volume', () => {
  const told = stills.flatMap((still) =>
    Array.from({ length: runsEach }, (_, index) => `test/${index}`).flatMap((seed) => {
      const run = knownRun(still, seed);
      return volumeReads.map((reads) => ({
        name: `${still} ${seed} ${reads}`,
        whole: run === null ? undefined : cutErrors(run, true, reads)[0],
      }));
    }),
  );
  expect(told.filter(({ whole }) => whole?.isCovered !== true)).toEqual([]);
  expect(told).toHaveLength(stills.length * runsEach * volumeReads.length);
});
