/** Fewer gaps tell too little. */
const fewestTaps = 4;

/** Bubbles a minute by the moments [ms] at which somebody tapped, one a bubble; null while they are too few. */
export function bubbleRate(tapsMs: readonly number[]): number | null {
  const [first] = tapsMs;
  const last = tapsMs.at(-1);
  if (tapsMs.length < fewestTaps || first === undefined || last === undefined || last <= first) {
    return null;
  }
  return (60_000 * (tapsMs.length - 1)) / (last - first);
}
