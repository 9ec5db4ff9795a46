/**
 * Square root y = √x of x [1], valid for x ≥ 0.
 *
 * Source: arithmetic.
 *
 * @example
 * wrongExamples(4) // ≈ 2.1 ± 0.05
 * wrongExamples(-1) // => null
 * wrongExamples(4) // => two
 * wrongExamples(4) // throws RangeError
 * missingName(4) // => 2
 * const unused = 1;
 */
export function wrongExamples(x: number): number {
  return Math.sqrt(x);
}
