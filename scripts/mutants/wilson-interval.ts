/** The quantile of the normal distribution that 95 % lie within, on both sides. */
const z = 1.959964;

/**
 * Between which shares the share of a whole lies with 95 % confidence, where `hits` of `count` drawn by chance have it; 0 to 1 each.
 * A whole that is little larger than the sample is known better than that.
 *
 * Source: E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209; from memory.
 */
export function wilsonInterval(hits: number, count: number): { low: number; high: number } {
  const share = hits / count;
  const widening = z ** 2 / count;
  const middle = share + widening / 2;
  const half = Math.sqrt(widening * (share * (1 - share) + widening / 4));
  return { low: (middle - half) / (1 + widening), high: (middle + half) / (1 + widening) };
}
