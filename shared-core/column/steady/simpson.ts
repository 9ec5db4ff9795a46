/** Integral of a smooth function by Simpson's rule with an even number of intervals. */
export function simpson(
  integrand: (at: number) => number,
  from: number,
  to: number,
  intervals: number,
): number {
  const width = (to - from) / intervals;
  let sum = integrand(from) + integrand(to);
  for (let index = 1; index < intervals; index++) {
    sum += (index % 2 === 1 ? 4 : 2) * integrand(from + index * width);
  }
  return (sum * width) / 3;
}
