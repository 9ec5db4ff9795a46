/** How often good readings come, and for how long none may come before that is worth a word. */
export interface ReadingPace {
  /** Takes the time of a good second. */
  see(timeS: number): void;
  lastS(): number | null;
  /** How long a silence is ordinary at this pace [s]. */
  patienceS(onlyBadOnesCome: boolean): number;
}

/** A probe that has just been connected may take so long to its first line [s]; chosen here. */
const beforeFirstS = 30;
/** Before so many intervals nobody knows a logger's pace: a slow one must not count as silent. */
const intervalsToKnow = 2;
/** But a probe that falls silent at once must be told of: loggers slower than once a minute are rare. */
const unknownPaceS = 180;

export function createReadingPace(): ReadingPace {
  let lastS: number | null = null;
  let intervalS = 1;
  let intervals = 0;

  const learn = (gapS: number): void => {
    if (intervals < intervalsToKnow) {
      // The shorter of the first two: the longer may hold an outage.
      intervalS = intervals === 0 ? gapS : Math.min(intervalS, gapS);
      intervals += 1;
    } else {
      intervalS += 0.2 * (Math.min(gapS, 4 * intervalS + 1) - intervalS);
    }
  };

  return {
    see: (timeS) => {
      if (lastS !== null && timeS > lastS) learn(timeS - lastS);
      lastS = timeS;
    },
    lastS: () => lastS,
    patienceS: (onlyBadOnesCome) => {
      if (lastS === null) return beforeFirstS;
      return intervals < intervalsToKnow && !onlyBadOnesCome ? unknownPaceS : 3 * intervalS;
    },
  };
}
