/** What comes in from one window, worked on no faster than the window may ask. */
export interface RequestQueue {
  add(text: string): void;
  close(): void;
}

export interface RequestQueueDeps {
  readonly limits: { readonly inFlight: number; readonly perS: number; readonly burst: number };
  readonly nowMs: () => number;
  /** Settles once the answer has left. */
  readonly work: (text: string) => Promise<void>;
  /** Stops and starts the reading of the socket: who asks too much waits, and nothing is piled up here. */
  readonly pause: () => void;
  readonly resume: () => void;
}

const lookEveryMs = 50;

export function createRequestQueue(deps: RequestQueueDeps): RequestQueue {
  const { limits, nowMs, work, pause, resume } = deps;
  let waiting: string[] = [];
  let inFlight = 0;
  let allowed: number = limits.burst;
  let countedMs = nowMs();
  let timer: ReturnType<typeof setTimeout> | null = null;

  function mayWork(): boolean {
    const now = nowMs();
    allowed = Math.min(limits.burst, allowed + ((now - countedMs) / 1000) * limits.perS);
    countedMs = now;
    return allowed >= 1 && inFlight < limits.inFlight;
  }

  function workOff(): void {
    while (waiting.length > 0 && mayWork()) {
      const [text = ''] = waiting.splice(0, 1);
      allowed -= 1;
      inFlight += 1;
      void work(text).finally(() => {
        inFlight -= 1;
        workOff();
      });
    }
    if (waiting.length === 0) resume();
    else timer ??= setTimeout(lookAgain, lookEveryMs);
  }

  function lookAgain(): void {
    timer = null;
    workOff();
  }

  return {
    add(text) {
      waiting.push(text);
      workOff();
      if (waiting.length > 0) pause();
    },
    close() {
      waiting = [];
      if (timer !== null) clearTimeout(timer);
    },
  };
}
