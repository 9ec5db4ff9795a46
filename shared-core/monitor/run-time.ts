/** The time of a run as inputs and waiting move it on: one step after the other, each whole second once. */
export interface RunTime {
  /** Steps through the seconds that are over at `timeS`. */
  passTo(timeS: number): void;
  /** The same for an input that comes at `timeS`; after a longer silence than is stepped through, time goes on from there. */
  hearAt(timeS: number): void;
  /** The latest time told of. */
  nowS(): number;
  /** The second that was worked out last. */
  steppedS(): number;
}

/**
 * A second is worked out when time has passed its end by this much, so that readings which arrive a
 * little out of order still fall into their own second.
 */
const settleS = 0.5;
/**
 * Time is stepped through for so long after the last input; then it stands until the next one, whether
 * somebody waited beside it or the run is replayed. A file with a wrong date costs no more than this.
 */
const longestSilenceS = 86_400;

/** @param second works out one second */
export function createRunTime(second: (timeS: number) => void): RunTime {
  let steppedS = 0;
  let nowS = 0;
  let heardS = 0;

  const passTo = (timeS: number): void => {
    if (!Number.isFinite(timeS)) return;
    nowS = Math.max(nowS, timeS);
    const untilS = Math.min(nowS, heardS + longestSilenceS);
    while (steppedS + 1 + settleS <= untilS) {
      steppedS += 1;
      second(steppedS);
    }
  };

  return {
    passTo,
    hearAt: (timeS) => {
      passTo(timeS);
      if (nowS > heardS + longestSilenceS) steppedS = Math.floor(nowS - settleS);
      if (Number.isFinite(timeS)) heardS = Math.max(heardS, timeS);
    },
    nowS: () => nowS,
    steppedS: () => steppedS,
  };
}
