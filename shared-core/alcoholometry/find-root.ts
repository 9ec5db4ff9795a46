/**
 * Root of a monotone function between two ends of opposite sign: secant steps with the retained end halved
 * when it stays twice (Illinois), so the bracket always closes.
 */
export function findRoot(of: (at: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [atA, atB] = [of(a), of(b)];
  if (atA === 0) return a;
  for (let count = 0; count < 200; count++) {
    const next = b - (atB * (b - a)) / (atB - atA);
    // Only then is there nothing left to find: a step onto the retained end may be the rounding of one right beside it.
    if (next === b) break;
    const atNext = of(next);
    if (Math.sign(atNext) === Math.sign(atB)) atA /= 2;
    else [a, atA] = [b, atB];
    [b, atB] = [next, atNext];
    if (Math.abs(b - a) < 1e-14) break;
  }
  return b;
}
