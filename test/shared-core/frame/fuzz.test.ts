import { describe, expect, test } from 'vitest';
import { fuzzFrames, fuzzTargets } from '../../../scripts/fuzz/fuzz-frames.ts';

/** A sample of what `npx tsx scripts/fuzz-frames.ts` does a million times. */
const strings = 2000;

describe.each(fuzzTargets)('$name, fed with arbitrary bytes', (target) => {
  test('never throws, stays bounded and hears the next line', () => {
    expect(fuzzFrames(target, { strings, seed: 1 })).toEqual({
      strings,
      threw: 0,
      notResynchronised: 0,
      madeUp: 0,
      longestPending: expect.toSatisfy((bytes: number) => bytes <= 512),
    });
  });
});
