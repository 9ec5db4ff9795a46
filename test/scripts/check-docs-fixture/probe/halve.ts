/**
 * Half of a length: h = l / 2.
 *
 * @param length valid from 0 to 10 [m]
 *
 * Source: arithmetic.
 *
 * @example
 * halve(3) // ≈ 1.4 ± 0.1
 * const first = halve(
 *   8,
 * ) as number;
 * halve(first) // => 2
 * halve(-1) // throws RangeError
 */
export function halve(length: number): number {
  if (!(length >= 0)) throw new RangeError('length must not be negative');
  return length / 2;
}

/** What `halveAll` takes. */
interface Lengths {
  /** First length [m]. */
  readonly first: number;
  readonly secondM: number;
}

/**
 * Half of two lengths, h = l / 2, valid for any length.
 *
 * Source: arithmetic.
 *
 * @example
 * halveAll({ first: 1, secondM: 4 }) // => {"first":0.5,"second":2}
 */
export function halveAll(lengths: Lengths): { first: number; second: number } {
  return { first: lengths.first / 2, second: lengths.secondM / 2 };
}
