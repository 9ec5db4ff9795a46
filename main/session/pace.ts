import type { Clock, Scheduler } from '../clock/index.ts';

/** Calls `act` soon after it is asked to, but at most once in `gapS`; the last request is never lost. */
export interface Pace {
  request(): void;
  /** Acts now if a request waits. */
  flush(): void;
}

export function createPace(
  gapS: number,
  { clock, scheduler }: { readonly clock: Clock; readonly scheduler: Scheduler },
  act: () => void,
): Pace {
  let lastS = Number.NEGATIVE_INFINITY;
  let cancel: (() => void) | null = null;

  function run(): void {
    cancel?.();
    cancel = null;
    lastS = clock.monotonicS();
    act();
  }

  return {
    request() {
      if (cancel !== null) return;
      const waitS = lastS + gapS - clock.monotonicS();
      if (waitS <= 0) run();
      else cancel = scheduler.after(waitS, run);
    },
    flush() {
      if (cancel !== null) run();
    },
  };
}
