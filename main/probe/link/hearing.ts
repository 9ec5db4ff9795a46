import {
  countTextBytes,
  explainRejection,
  type LineOutcome,
  printable,
  worded,
} from '#shared-core';

export type HearingState = 'connecting' | 'hearing' | 'silent' | 'unreadable';

/** Judges, from what has arrived and when, whether the probe is heard. */
export interface Hearing {
  opened(atS: number): void;
  bytes(chunk: Uint8Array, atS: number): void;
  outcomes(outcomes: readonly LineOutcome[], atS: number): void;
  state(atS: number): HearingState;
  readingsPerS(atS: number): number;
  rejectedLines(): number;
  /** Oldest first; the same array until another line is heard. */
  recentLines(): string[];
  advice(atS: number): string | null;
}

/** A probe that says nothing for longer than this, and than three of its intervals, is silent. */
const leastSilenceS = 5;
/** Between the first reading and the second nobody knows how slow the probe is. */
const assumedIntervalS = 5;
/** Boards that restart when the port opens print boot messages first; they are not held against them. */
const settleS = 3;
const rateWindowS = 5;
const mostRecentLines = 8;
const longestShownLine = 200;
/** Share of printable bytes below which the speed is wrong; text has 1, random bytes have 0.38. */
const leastTextShare = 0.8;

export function createHearing(expectsText = true): Hearing {
  let openedS = 0;
  let lastByteS: number | null = null;
  let lastReadingS: number | null = null;
  let intervalS: number | null = null;
  let rejected = 0;
  let lastRejection: LineOutcome['rejections'][number] | null = null;
  let recentLines: string[] = [];
  let sample = { all: 0, text: 0, ends: 0 };
  let recent: { readonly atS: number; readonly count: number }[] = [];

  const silenceLimitS = () =>
    lastReadingS === null
      ? leastSilenceS
      : Math.max(leastSilenceS, 3 * (intervalS ?? assumedIntervalS));
  const isWithin = (momentS: number | null, atS: number) =>
    momentS !== null && atS - momentS <= silenceLimitS();

  function state(atS: number): HearingState {
    if (isWithin(lastReadingS, atS)) return 'hearing';
    const settling = atS - openedS <= settleS;
    if (isWithin(lastByteS, atS)) return settling ? 'connecting' : 'unreadable';
    return isWithin(openedS, atS) ? 'connecting' : 'silent';
  }

  function whyUnreadable(): string {
    if (!expectsText) {
      return lastRejection === null
        ? worded('Bytes arrive that are no answer: check speed, parity and unit number.')
        : explainRejection(lastRejection);
    }
    if (sample.all > 0 && sample.text / sample.all < leastTextShare) {
      return worded('Bytes arrive but they are not text: the speed (baud rate) is probably wrong.');
    }
    if (sample.ends === 0) {
      return worded(
        'Text arrives without line ends: check the speed (baud rate) and the language.',
      );
    }
    return lastRejection === null
      ? worded('Lines arrive but none holds a reading: choose another language.')
      : explainRejection(lastRejection);
  }

  return {
    state,
    opened(atS) {
      openedS = atS;
      lastByteS = null;
      lastReadingS = null;
      lastRejection = null;
      sample = { all: 0, text: 0, ends: 0 };
    },
    bytes(chunk, atS) {
      lastByteS = atS;
      if (sample.all > 4096) {
        sample = { all: sample.all / 2, text: sample.text / 2, ends: sample.ends / 2 };
      }
      sample.all += chunk.length;
      sample.text += countTextBytes(chunk);
      sample.ends += chunk.includes(0x0a) || chunk.includes(0x0d) ? 1 : 0;
    },
    outcomes(outcomes, atS) {
      let values = 0;
      for (const outcome of outcomes) {
        recentLines = [...recentLines, printable(outcome.text, longestShownLine)].slice(
          -mostRecentLines,
        );
        values += outcome.values.length;
        const [rejection] = outcome.rejections;
        if (rejection === undefined) {
          lastRejection = null;
        } else {
          lastRejection = rejection;
          const booting = atS - openedS <= settleS && lastReadingS === null;
          if (!booting) rejected += 1;
        }
      }
      if (values === 0) return;
      if (lastReadingS !== null) {
        const gapS = (atS - lastReadingS) / outcomes.length;
        intervalS = intervalS === null ? gapS : intervalS + 0.2 * (gapS - intervalS);
      }
      lastReadingS = atS;
      recent = [...recent.filter((entry) => atS - entry.atS < rateWindowS), { atS, count: values }];
    },
    readingsPerS(atS) {
      const inWindow = recent.filter((entry) => atS - entry.atS < rateWindowS);
      const sum = inWindow.reduce((total, entry) => total + entry.count, 0);
      const windowS = Math.min(rateWindowS, Math.max(1, atS - openedS));
      return Math.round((10 * sum) / windowS) / 10;
    },
    rejectedLines: () => rejected,
    recentLines: () => recentLines,
    advice(atS) {
      switch (state(atS)) {
        case 'hearing':
          return lastRejection?.kind === 'no-value' ? explainRejection(lastRejection) : null;
        case 'connecting':
          return worded('Listening …');
        case 'silent':
          return worded(
            'The port is open but nothing arrives: is the probe switched on, and is this the right port?',
          );
        case 'unreadable':
          return whyUnreadable();
      }
    },
  };
}
