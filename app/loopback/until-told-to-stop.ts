/** What of Node's `process` tells that the end is wanted. */
export interface StopSignals {
  readonly ppid: number;
  on(signal: 'SIGINT' | 'SIGTERM' | 'SIGHUP', listener: () => void): unknown;
}

const lookEveryMs = 500;

/**
 * Resolves at Ctrl+C, when the system asks, or when the program that started this one is gone: npm runs its
 * scripts through a shell that dies of a signal without passing it on, and an app that nobody can reach must
 * not hold its port and its folder. Later signals change nothing: the end is under way.
 */
export function untilToldToStop(signals: StopSignals): Promise<void> {
  const parent = signals.ppid;
  return new Promise((resolve) => {
    const watch = setInterval(() => {
      if (signals.ppid !== parent) stop();
    }, lookEveryMs);
    const stop = () => {
      clearInterval(watch);
      resolve();
    };
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) signals.on(signal, stop);
  });
}
