/** Time as the services see it: a parameter, so tests can hold it still. */
export interface Clock {
  /** Monotonic seconds; never steps, may stop during sleep. */
  monotonicS(): number;
  /** Wall clock, milliseconds since 1970; may step. */
  wallMs(): number;
}

/** The computer's own clocks. */
export const systemClock: Clock = {
  monotonicS: () => performance.now() / 1000,
  wallMs: () => Date.now(),
};
