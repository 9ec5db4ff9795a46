/** Requests of one kind wait for each other only: reads of a disk that is asleep keep no act at the still waiting. */
export type Lane = 'acts' | 'reads';

/** One request that has come in. */
export interface QueuedRequest {
  readonly lane: Lane;
  readonly characters: number;
  /** Settles once the answer has left. */
  readonly work: () => Promise<void>;
}

/** What comes in from one window, worked on no faster than the window may ask. */
export interface RequestQueue {
  add(request: QueuedRequest): void;
  close(): void;
}

export interface RequestQueueDeps {
  readonly limits: {
    /** Requests of one lane being worked on. */
    readonly inFlight: number;
    readonly perS: number;
    readonly burst: number;
    /** Characters that may wait. */
    readonly waitingCharacters: number;
  };
  readonly nowMs: () => number;
  /** Stops and starts the reading of the socket: who asks too much waits, and little is piled up here. */
  readonly pause: () => void;
  readonly resume: () => void;
}

const lookEveryMs = 50;

export function createRequestQueue(deps: RequestQueueDeps): RequestQueue {
  const { limits, nowMs, pause, resume } = deps;
  let waiting: QueuedRequest[] = [];
  let waitingCharacters = 0;
  const inFlight: Record<Lane, number> = { acts: 0, reads: 0 };
  let allowed: number = limits.burst;
  let countedMs = nowMs();
  let timer: ReturnType<typeof setTimeout> | null = null;

  function mayAsk(): boolean {
    const now = nowMs();
    allowed = Math.min(limits.burst, allowed + ((now - countedMs) / 1000) * limits.perS);
    countedMs = now;
    return allowed >= 1;
  }

  /** The first whose lane has room; null where none has, or too much was asked of late. */
  function takeNext(): QueuedRequest | null {
    if (!mayAsk()) return null;
    const at = waiting.findIndex(({ lane }) => inFlight[lane] < limits.inFlight);
    const [next] = at < 0 ? [] : waiting.splice(at, 1);
    return next ?? null;
  }

  function workOff(): void {
    for (let next = takeNext(); next !== null; next = takeNext()) {
      const { lane, characters, work } = next;
      waitingCharacters -= characters;
      allowed -= 1;
      inFlight[lane] += 1;
      void work().finally(() => {
        inFlight[lane] -= 1;
        workOff();
      });
    }
    if (waitingCharacters <= limits.waitingCharacters) resume();
    else pause();
    if (waiting.length > 0) timer ??= setTimeout(lookAgain, lookEveryMs);
  }

  function lookAgain(): void {
    timer = null;
    workOff();
  }

  return {
    add(request) {
      waiting.push(request);
      waitingCharacters += request.characters;
      workOff();
    },
    close() {
      waiting = [];
      if (timer !== null) clearTimeout(timer);
    },
  };
}
