import type { SentReading } from './numbered-probe.ts';

/** A number seen on the screen and when; the same clock as {@link SentReading}. */
export interface PaintedNumber {
  readonly text: string;
  readonly atMs: number;
}

/** A reading whose number, or a later one, was on the screen. */
export interface ShownReading {
  readonly sentMs: number;
  readonly shownMs: number;
  /** It never was on the screen itself, because a later one came first. */
  readonly overtaken: boolean;
}

export interface MatchedPaints {
  readonly readings: readonly ShownReading[];
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
  const readings: ShownReading[] = [];
  let unexplained = 0;
  let longestPauseMs = 0;
  let lastMs: number | null = null;
  for (const { text, atMs } of painted) {
    const pauseMs = lastMs === null ? 0 : atMs - lastMs;
    longestPauseMs = Math.max(longestPauseMs, pauseMs);
    lastMs = atMs;
    const candidates = sentBetween(sent, readings.length, atMs);
    const isIt = (reading: SentReading) => reading.text === text;
    const hasGoneRound = pauseMs > 0.9 * repeatMs;
    const found = hasGoneRound ? candidates.findLastIndex(isIt) : candidates.findIndex(isIt);
    if (found < 0) unexplained += 1;
    for (let index = 0; index <= found; index += 1) {
      const sentMs = candidates[index]?.atMs ?? Number.NaN;
      readings.push({ sentMs, shownMs: atMs, overtaken: index < found });
    }
  }
  return { readings, unexplained, longestPauseMs };
}

function sentBetween(
  sent: readonly SentReading[],
  from: number,
  untilMs: number,
): readonly SentReading[] {
  let end = from;
  while (end < sent.length && (sent[end]?.atMs ?? untilMs) <= untilMs) end += 1;
  return sent.slice(from, end);
}
