const firstWaitMs = 250;
const longestWaitMs = 5000;

/** How long to wait before the next attempt: doubling from 0.25 s to 5 s, spread by ±20 %. */
export function waitBeforeRetryMs(attempt: number, spread: number): number {
  const wait = Math.min(longestWaitMs, firstWaitMs * 2 ** Math.min(attempt, 10));
  return Math.round(wait * (0.8 + 0.4 * spread));
}
