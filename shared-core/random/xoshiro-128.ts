/** Four 32-bit words, not all zero. */
export type Xoshiro128State = readonly [number, number, number, number];

/**
 * xoshiro128**: a stream of 32-bit unsigned integers with period 2^128 − 1.
 *
 * Source: D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", ACM TOMS 47 (2021) 36;
 * reference code `xoshiro128starstar.c`, version 1.1 (public domain).
 */
export function xoshiro128(seed: Xoshiro128State): () => number {
  let [s0, s1, s2, s3] = seed;
  if ((s0 | s1 | s2 | s3) === 0) throw new Error('xoshiro128 cannot start from an all-zero state.');
  return () => {
    const result = Math.imul(rotateLeft(Math.imul(s1, 5), 7), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = rotateLeft(s3, 11);
    return result;
  };
}

function rotateLeft(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}
