import type { Clock } from '../clock/index.ts';

/** Three clocks read at one moment. */
export interface ClockReading {
  readonly monoS: number;
  readonly wallMs: number;
  /** Since the computer was started, sleep included. */
  readonly uptimeS: number;
}

/** What happened to the clocks between two readings. */
export interface ClockEvent {
  /** The monotonic clock at the earlier reading: what the clock did not count came after it. */
  readonly sinceS: number;
  /** How long the computer slept while the monotonic clock stood still [s]; 0 when it did not. */
  readonly sleptS: number;
  /** How far the wall clock was set [s]; 0 when it was not. */
  readonly wallStepS: number;
}

/** Some systems count the time they have been on in whole seconds: two readings of it differ by a second for nothing. */
const leastSleepS = 2;
/** Time services slew small errors without a step. */
const leastStepS = 2;

/** A process that stood still between two of the clocks read them at two moments [s]. */
const oneMomentS = 0.05;
const mostTries = 5;

/** Reads all three clocks at one moment, as nearly as it can be had. */
export function readClocks(clock: Clock, uptimeS: () => number): ClockReading {
  for (let tries = 1; ; tries += 1) {
    const reading = { monoS: clock.monotonicS(), wallMs: clock.wallMs(), uptimeS: uptimeS() };
    if (tries === mostTries || clock.monotonicS() - reading.monoS <= oneMomentS) return reading;
  }
}

/**
 * What the clocks say happened since `before`, or null when nothing worth a record did. A long time between two readings says
 * nothing: this process may have stood still while the serial process heard every line. Sleep is what the clock that counts it
 * has more than the one that does not; on systems where both count it, the serial process knows that it slept.
 */
export function clockEvent(before: ClockReading, after: ClockReading): ClockEvent | null {
  const countedS = after.monoS - before.monoS;
  const uncountedS = after.uptimeS - before.uptimeS - countedS;
  const sleptS = uncountedS >= leastSleepS ? uncountedS : 0;
  const step = (after.wallMs - before.wallMs) / 1000 - countedS - sleptS;
  const wallStepS = Math.abs(step) >= leastStepS ? step : 0;
  return sleptS === 0 && wallStepS === 0 ? null : { sinceS: before.monoS, sleptS, wallStepS };
}
