/**
 * Run time from the monotonic clock: seconds since the start, stretched in rehearsals, never going
 * back. What is recorded is exactly what the monitor is given, so a replay repeats it.
 */
export interface RunClock {
  /** Run time of something that happened at `atS`; null when that was before the run. */
  stamp(atS: number): number | null;
  /**
   * How far the monitor may be advanced at `nowS`, or null when not further than it is: a quarter past
   * a whole second, where no tick can fall, and late enough that readings on their way come first.
   */
  advance(nowS: number): number | null;
  /** Run time now, to be the end of the run. */
  endAt(nowS: number): number;
  /** The computer slept: run time went on while the monotonic clock stood still. */
  skip(sleptS: number): void;
}

/** Readings come within this time after they were taken [s]. */
const deliveryS = 0.3;

export function createRunClock(startedAtS: number, timeScale: number): RunClock {
  let skippedS = 0;
  let lastS = 0;
  const runTimeS = (atS: number) =>
    Math.round(((atS - startedAtS) * timeScale + skippedS) * 1000) / 1000;

  function forward(timeS: number): number {
    lastS = Math.max(lastS, timeS);
    return lastS;
  }

  return {
    stamp: (atS) => (atS < startedAtS ? null : forward(runTimeS(atS))),
    advance(nowS) {
      const targetS = Math.floor(runTimeS(nowS - deliveryS) - 0.25) + 0.25;
      return targetS > lastS ? forward(targetS) : null;
    },
    endAt: (nowS) => forward(runTimeS(nowS)),
    skip(sleptS) {
      skippedS += sleptS * timeScale;
    },
  };
}
