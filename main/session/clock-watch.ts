/** Three clocks read at one moment. */
export interface ClockReading {
  readonly monoS: number;
  readonly wallMs: number;
  /** Since the computer was started, sleep included. */
  readonly uptimeS: number;
}

/** What happened to the clocks between two readings. */
export interface ClockEvent {
  /** How long the computer slept or stood still [s]; 0 when it did not. */
  readonly sleptS: number;
  /** The part of it that the monotonic clock did not count [s]. */
  readonly uncountedS: number;
  /** How far the wall clock was set [s]; 0 when it was not. */
  readonly wallStepS: number;
}

/** Shorter stops are ordinary: a busy computer, a garbage collection. */
const leastSleepS = 5;
/** Time services slew small errors without a step. */
const leastStepS = 2;

/** What the clocks say happened since `before`, or null when nothing worth a record did. */
export function clockEvent(before: ClockReading, after: ClockReading): ClockEvent | null {
  const countedS = after.monoS - before.monoS;
  const uncounted = after.uptimeS - before.uptimeS - countedS;
  const uncountedS = uncounted >= leastSleepS ? uncounted : 0;
  const sleptS = countedS + uncountedS >= leastSleepS ? countedS + uncountedS : 0;
  const step = (after.wallMs - before.wallMs) / 1000 - countedS - uncountedS;
  const wallStepS = Math.abs(step) >= leastStepS ? step : 0;
  return sleptS === 0 && wallStepS === 0 ? null : { sleptS, uncountedS, wallStepS };
}
