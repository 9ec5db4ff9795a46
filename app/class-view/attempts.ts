export interface Attempts {
  /** Whether this caller's next code is looked at: it has not been wrong too often of late, nor has everybody together. */
  mayTry(caller: string): boolean;
  wrong(caller: string): void;
}

export interface AttemptLimits {
  readonly perCaller: number;
  readonly together: number;
  readonly withinMs: number;
}

/** A minute in which one screen mistypes eight times, and a class a hundred. Guessing one of 31⁶ takes years at that pace. */
const usualLimits: AttemptLimits = { perCaller: 8, together: 100, withinMs: 60_000 };

/** Counts wrong codes; the window of time begins anew once it is over, so the count never grows. */
export function createAttempts(nowMs: () => number, limits = usualLimits): Attempts {
  let begunMs = nowMs();
  let together = 0;
  const byCaller = new Map<string, number>();

  function lookAtClock(): void {
    if (nowMs() - begunMs < limits.withinMs) return;
    begunMs = nowMs();
    together = 0;
    byCaller.clear();
  }

  return {
    mayTry(caller) {
      lookAtClock();
      return together < limits.together && (byCaller.get(caller) ?? 0) < limits.perCaller;
    },
    wrong(caller) {
      lookAtClock();
      together += 1;
      byCaller.set(caller, (byCaller.get(caller) ?? 0) + 1);
    },
  };
}
