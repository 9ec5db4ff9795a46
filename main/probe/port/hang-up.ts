import { isatty } from 'node:tty';

const lookEveryMs = 200;

/**
 * Calls `hungUp` once when the system has hung up the terminal behind an open descriptor, which is what
 * Linux and macOS do when a plug is pulled or the other end of a pseudo-terminal closes. From then on
 * every read answers "no bytes" at once; the serial library takes that for "nothing yet", reads again
 * without end and tells nobody, unless it happened to be waiting at that moment. A hung-up descriptor no
 * longer answers as a terminal. Returns what ends the watch.
 */
export function watchForHangUp(descriptor: () => number | null, hungUp: () => void): () => void {
  const timer = setInterval(() => {
    const open = descriptor();
    if (open === null || isatty(open)) return;
    clearInterval(timer);
    hungUp();
  }, lookEveryMs);
  return () => clearInterval(timer);
}
