import type { Monitor, MonitorChange, RunInput, Snapshot, Verdicts } from '#shared-core';

/** What the monitor said to one input; null once it has failed. */
export interface MonitorAnswer {
  readonly snapshot: Snapshot;
  readonly changes: readonly MonitorChange[];
  /** The strengths told so far. */
  readonly estimates: Verdicts['estimates'];
}

/** A monitor that can fail without harm to the recording. */
export interface GuardedMonitor {
  push(input: RunInput): MonitorAnswer | null;
  advanceTo(timeS: number): MonitorAnswer | null;
}

/** After its first failure the monitor is not asked again: half-changed state gives wrong advice. */
export function guardMonitor(
  create: () => Monitor,
  onFailure: (message: string) => void,
): GuardedMonitor {
  let monitor: Monitor | null = null;

  function ask(question: (monitor: Monitor) => Snapshot): MonitorAnswer | null {
    if (monitor === null) return null;
    try {
      const snapshot = question(monitor);
      return { snapshot, changes: monitor.takeChanges(), estimates: monitor.estimates() };
    } catch (error) {
      giveUp(error);
      return null;
    }
  }

  function giveUp(error: unknown): void {
    monitor = null;
    onFailure(error instanceof Error ? error.message : String(error));
  }

  try {
    monitor = create();
  } catch (error) {
    giveUp(error);
  }
  return {
    push: (input) => ask((asked) => asked.push(input)),
    advanceTo: (timeS) => ask((asked) => asked.advanceTo(timeS)),
  };
}
