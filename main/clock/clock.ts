import process from 'node:process';

/** Time as the services see it: a parameter, so tests can hold it still. */
export interface Clock {
  /** Monotonic seconds, the same in every process of this computer; never steps, may stop during sleep. */
  monotonicS(): number;
  /** Wall clock, milliseconds since 1970; may step. */
  wallMs(): number;
}

/**
 * The computer's own clocks. Not `performance.now()`, which counts from the start of each process: with one clock for all, what
 * the serial process stamps needs no translation, and no message that waited can bend it.
 */
export const systemClock: Clock = {
  monotonicS: () => Number(process.hrtime.bigint()) / 1e9,
  wallMs: () => Date.now(),
};
