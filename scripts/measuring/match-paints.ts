import type { SentReading } from './numbered-probe.ts';

/** A number seen on the screen and when; the same clock as {@link SentReading}. */
export interface PaintedNumber {
  readonly text: string;
  readonly atMs: number;
}

export interface MatchedPaints {
  /** For every reading: from the write to the moment when it, or one after it, was on the screen. */
  readonly latenciesMs: readonly number[];
  /** Readings that never were on the screen because a later one came first. */
  readonly overtaken: number;
  /** Numbers on the screen that no reading explains; anything but 0 voids the figures. */
  readonly unexplained: number;
  /** Longest time in which the number stood still [ms]; the matching is sure below {@link repeatMs}. */
  readonly longestPauseMs: number;
}

/** The numbers repeat after a second: older ones of the same text are told apart by their order alone. */
export const repeatMs = 1000;

/**
 * Finds the reading behind each number on the screen: numbers appear in the order of their readings, so
 * it is the first one after the last match with that text. After a pause in which the numbers may have gone round it is
 * the newest one, which is what the window shows by then.
 */
export function matchPaints(
  sent: readonly SentReading[],
  painted: readonly PaintedNumber[],
): MatchedPaints {
  const latenciesMs: number[] = [];
  let overtaken = 0;
  let unexplained = 0;
  let longestPauseMs = 0;
  let next = 0;
  let lastMs: number | null = null;
  for (const { text, atMs } of painted) {
    const pauseMs = lastMs === null ? 0 : atMs - lastMs;
    longestPauseMs = Math.max(longestPauseMs, pauseMs);
    lastMs = atMs;
    const isIt = (reading: SentReading | undefined) =>
      reading?.text === text && reading.atMs <= atMs;
    let found = next;
    while (found < sent.length && !isIt(sent[found])) found += 1;
    if (pauseMs > 0.9 * repeatMs) {
      for (let later = found + 1; later < sent.length; later += 1)
        if (isIt(sent[later])) found = later;
    }
    if (found === sent.length) {
      unexplained += 1;
      continue;
    }
    for (let index = next; index <= found; index += 1) {
      latenciesMs.push(atMs - (sent[index]?.atMs ?? atMs));
    }
    overtaken += found - next;
    next = found + 1;
  }
  return { latenciesMs, overtaken, unexplained, longestPauseMs };
}
