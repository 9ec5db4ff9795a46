import { fnv1a64 } from './fnv1a-64.ts';
import { splitMix64 } from './split-mix-64.ts';
import { xoshiro128 } from './xoshiro-128.ts';

/**
 * A repeatable source of random numbers. The same seed gives the same numbers, for ever: by hand, since the language's own source
 * takes no seed, and a package's next version may give others.
 */
export interface Random {
  /** Uniform in [0, 1), 53 bits. */
  uniform(): number;
  /** Standard normal: mean 0, standard deviation 1. */
  normal(): number;
  /** Exponential with mean 1. */
  exponential(): number;
  /** Whole number with `low ≤ n ≤ high`, both ends included. */
  integer(low: number, high: number): number;
  /**
   * An independent stream named by `label`. It depends on the seed and the labels only, not on how
   * many numbers were drawn before, so adding a draw in one place never shifts another.
   */
  fork(label: string): Random;
}

/** Separates seed and labels; not typed by people, so `seed/label` texts cannot collide. */
const separator = '\u001f';

/**
 * A seeded source of random numbers; a numeric seed is the same as its decimal text.
 *
 * The text is hashed (FNV-1a, 64 bit), the hash fills the state (SplitMix64), xoshiro128** draws.
 * Fast and repeatable, not cryptographic.
 *
 * Source: see {@link xoshiro128}, {@link splitMix64}, {@link fnv1a64}; normal numbers by the polar
 * method, G. Marsaglia, T. A. Bray, SIAM Review 6 (1964) 260.
 *
 * @example
 * createRandom(1).integer(3, 3) // => 3
 * createRandom('noise').uniform() === createRandom('noise').uniform() // => true
 */
export function createRandom(seed: number | string): Random {
  const seedText = String(seed);
  const nextWord = xoshiro128(stateFrom(seedText));
  let spareNormal: number | undefined;

  const uniform = (): number => {
    const high = nextWord() >>> 5;
    const low = nextWord() >>> 6;
    return (high * 0x4000000 + low) / 0x20000000000000;
  };

  const normal = (): number => {
    if (spareNormal !== undefined) {
      const kept = spareNormal;
      spareNormal = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square < 1 && square > 0) {
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spareNormal = y * scale;
        return x * scale;
      }
    }
  };

  return {
    uniform,
    normal,
    exponential: () => -Math.log(1 - uniform()),
    integer: (low, high) => {
      if (!Number.isSafeInteger(low) || !Number.isSafeInteger(high) || low > high) {
        throw new Error(`integer(${low}, ${high}) needs whole numbers with low ≤ high.`);
      }
      return low + Math.floor(uniform() * (high - low + 1));
    },
    fork: (label) => createRandom(`${seedText}${separator}${label}`),
  };
}

function stateFrom(seedText: string): readonly [number, number, number, number] {
  const next = splitMix64(fnv1a64(seedText));
  const first = next();
  const second = next();
  return [low32(first), low32(first >> 32n), low32(second), low32(second >> 32n)];
}

function low32(word: bigint): number {
  return Number(BigInt.asUintN(32, word));
}
