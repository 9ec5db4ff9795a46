/** What of Node's `process` tells that the end is wanted. */
export interface StopSignals {
  readonly ppid: number;
  on(signal: 'SIGINT' | 'SIGTERM' | 'SIGHUP', listener: () => void): unknown;
}

export interface StopWish {
  /** Called at each Ctrl+C before the end; true when the person is to be asked first, and this one does not count. */
  readonly asksFirst: () => boolean;
  /** Ctrl+C once more while the end is under way. */
  readonly again: () => void;
}

const lookEveryMs = 500;

/**
 * Resolves at Ctrl+C, when the system asks, or when the program that started this one is gone: npm runs its
 * scripts through a shell that dies of a signal without passing it on, and an app that nobody can reach must
 * not hold its port and its folder. The system's wish is no question; a second one changes nothing.
 */
export function untilToldToStop(signals: StopSignals, wish: StopWish): Promise<void> {
  const parent = signals.ppid;
  return new Promise((resolve) => {
    let isEnding = false;
    const watch = setInterval(() => {
      if (signals.ppid !== parent) stop();
    }, lookEveryMs);
    const stop = () => {
      isEnding = true;
      clearInterval(watch);
      resolve();
    };
    signals.on('SIGTERM', stop);
    signals.on('SIGHUP', stop);
    signals.on('SIGINT', () => {
      if (isEnding) wish.again();
      else if (!wish.asksFirst()) stop();
    });
  });
}
