import { readFileSync } from 'node:fs';

/** How long this thread ever worked without a look at anything else. */
export interface LongestPiece {
  /** Since last asked [ms of the processor, so that a busy computer makes it no longer]. */
  takeMs(): number;
}

const lookEveryMs = 2;

/** Linux says how long a thread ran. Source: Linux kernel, Documentation/scheduler/sched-stats.rst, /proc/<pid>/schedstat. */
export function watchLongestPiece(): LongestPiece {
  const ranMs = () =>
    Number(readFileSync('/proc/thread-self/schedstat', 'latin1').split(' ')[0]) / 1e6;
  let lastMs = ranMs();
  let longestMs = 0;
  setInterval(() => {
    const nowMs = ranMs();
    longestMs = Math.max(longestMs, nowMs - lastMs);
    lastMs = nowMs;
  }, lookEveryMs).unref();
  return {
    takeMs() {
      const taken = longestMs;
      longestMs = 0;
      return taken;
    },
  };
}
