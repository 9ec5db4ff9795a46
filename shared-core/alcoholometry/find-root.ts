/**
 * Root of a monotone function between two ends of opposite sign: secant steps with the retained end halved
 * when it stays twice (Illinois), so the bracket always closes.
 */
export function findRoot(of: (at: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [atA, atB] = [of(a), of(b)];
  if (atA === 0) return a;
  for (let count = 0; count < 200 && atB !== 0; count++) {
    const step = (atB * (b - a)) / (atB - atA);
    if (b - step === b) break;
    // A root right beside the retained end: the step would be all of the bracket, and its rounding all there is.
    const next = b - step === a ? (a + b) / 2 : b - step;
    const atNext = of(next);
    if (Math.sign(atNext) === Math.sign(atB)) atA /= 2;
    else [a, atA] = [b, atB];
    [b, atB] = [next, atNext];
    if (Math.abs(b - a) < 1e-14) break;
  }
  return b;
}
