/** Further out than so many standard deviations lies less than 1e-17 of a normal distribution. */
export const nothingBeyondSds = 8.5;

/**
 * Standard normal distribution function, |error| < 8e-8.
 *
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.17.
 */
export function normalCumulative(z: number): number {
  // Most of a grid lies far from the mark, and there 1 less the tail is 1 to the last bit.
  if (z > nothingBeyondSds) return 1;
  const tail = density(z) * hastings(Math.abs(z));
  return z >= 0 ? 1 - tail : tail;
}

/** Its logarithm, also where the function itself vanishes. */
export function logNormalCumulative(z: number): number {
  if (z > -5) return Math.log(normalCumulative(z));
  // Asymptotic series, 26.2.12, first two terms: better than 1 % below −5.
  return -0.5 * z * z - Math.log(-z * rootOfTwoPi) + Math.log1p(-1 / (z * z));
}

const rootOfTwoPi = Math.sqrt(2 * Math.PI);

function density(z: number): number {
  return Math.exp((-z * z) / 2) / rootOfTwoPi;
}

function hastings(z: number): number {
  const t = 1 / (1 + 0.2316419 * z);
  return (
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  );
}
