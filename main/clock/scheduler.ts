/** Timers as the services see them: a parameter, so tests can run hours in a moment. */
export interface Scheduler {
  /** Calls `act` every `periodS` seconds until the returned function is called. */
  every(periodS: number, act: () => void): () => void;
  /** Calls `act` once after `delayS` seconds unless the returned function is called before. */
  after(delayS: number, act: () => void): () => void;
}

/** Node's own timers. */
export const systemScheduler: Scheduler = {
  every(periodS, act) {
    const timer = setInterval(act, periodS * 1000);
    return () => clearInterval(timer);
  },
  after(delayS, act) {
    const timer = setTimeout(act, delayS * 1000);
    return () => clearTimeout(timer);
  },
};
