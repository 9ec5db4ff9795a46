/**
 * Run time from the monotonic clock: seconds since the start, stretched in rehearsals. What happened is stamped with when it
 * happened, whenever it is told: a reading that waited is never moved to the moment at which it was taken in. What is recorded is
 * exactly what the monitor is given, so a replay repeats it.
 */
export interface RunClock {
  /** Run time of something that happened at `atS`; null when that was before this process began to record it. */
  stamp(atS: number): number | null;
  /** The same of what the monitor is not given: it may lie in seconds that are worked out. The run's beginning for what was before it. */
  told(atS: number): number;
  /**
   * How far the monitor may be advanced when all is known up to `knownS`, or null when not further than it is: a quarter past
   * a whole second, where no tick can fall, and late enough that readings on their way come first.
   */
  advance(knownS: number): number | null;
  /** The computer slept: run time went on while the monotonic clock stood still at `atS`. */
  skip(atS: number, sleptS: number): void;
}

/** Lines that came in one piece are spread over at most this time before it, as a rule [s]. */
const deliveryS = 0.3;
/**
 * The monitor has worked out the seconds that ended this long before where it was advanced to. A reading of such a second (two
 * lines of a very slow probe that came in one piece) counts for the next one, live as in a replay.
 */
const closedBehindS = 0.75;

/** @param fromS run time at `startedAtS`: more than 0 where a run goes on that another process began [s] */
export function createRunClock(startedAtS: number, timeScale: number, fromS = 0): RunClock {
  /** Latest first. */
  let skips: readonly { readonly atS: number; readonly runS: number }[] = [];
  let advancedS = 0;

  function runTimeS(atS: number): number {
    const skippedS = skips.reduce((sum, skip) => sum + (atS > skip.atS ? skip.runS : 0), fromS);
    return Math.round(((atS - startedAtS) * timeScale + skippedS) * 1000) / 1000;
  }

  return {
    stamp: (atS) =>
      atS < startedAtS ? null : Math.max(runTimeS(atS), advancedS - closedBehindS, fromS),
    told: (atS) => runTimeS(Math.max(atS, startedAtS)),
    advance(knownS) {
      const targetS = Math.floor(runTimeS(knownS - deliveryS) - 0.25) + 0.25;
      if (targetS <= advancedS) return null;
      advancedS = targetS;
      return targetS;
    },
    skip(atS, sleptS) {
      skips = [{ atS, runS: sleptS * timeScale }, ...skips];
    },
  };
}
