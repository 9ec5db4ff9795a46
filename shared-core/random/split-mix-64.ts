/**
 * SplitMix64: an endless stream of 64-bit words from one 64-bit seed; used only to fill generator states.
 *
 * Source: S. Vigna, `splitmix64.c` (public domain, 2015), after G. L. Steele, D. Lea, C. H. Flood,
 * "Fast splittable pseudorandom number generators", OOPSLA 2014.
 */
export function splitMix64(seed: bigint): () => bigint {
  let state = seed;
  return () => {
    state = BigInt.asUintN(64, state + 0x9e3779b97f4a7c15n);
    let word = state;
    word = BigInt.asUintN(64, (word ^ (word >> 30n)) * 0xbf58476d1ce4e5b9n);
    word = BigInt.asUintN(64, (word ^ (word >> 27n)) * 0x94d049bb133111ebn);
    return word ^ (word >> 31n);
  };
}
