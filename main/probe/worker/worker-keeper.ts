import type { Scheduler } from '../../clock/index.ts';
import { type FromWorker, fromWorkerSchema, type ToWorker } from './messages.ts';
import type { ProbeWorker } from './worker-port.ts';

type Question = Extract<ToWorker, { readonly id: number }>;
type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;
type Answer<K extends FromWorker['type']> = Extract<FromWorker, { type: K; id: number }>;

export interface WorkerKeeperParts {
  readonly scheduler: Scheduler;
  readonly startWorker: () => ProbeWorker;
  readonly heard: (message: FromWorker) => void;
  /** A new process is ready after one was lost. */
  readonly restarted: () => void;
  readonly lost: () => void;
}

/** Keeps one serial process alive: starts it, listens for its pulse, replaces it when it fails. */
export interface WorkerKeeper {
  post(message: ToWorker): void;
  /** Whether the process that runs now has said its first word. */
  isReady(): boolean;
  /** The answer, or null when the process ended before it answered; without one the next is waited for. */
  ask<K extends Answer<FromWorker['type']>['type']>(
    question: WithoutId<Question>,
    kind: K,
  ): Promise<Answer<K> | null>;
  close(): Promise<void>;
}

const pingEveryS = 1;
/** Pings in silence before the process counts as hung. */
const mostUnanswered = 5;
/**
 * The same before its first word: starting takes a moment on a fast computer and half a minute beside a virus scanner. Counted in
 * turns of this process, not in seconds: a halt here is no silence there.
 */
const mostUnansweredAtStart = 30;
const restartDelaysS = [0.2, 1, 2, 5] as const;
/** Asked to close first; a process that does not manage within this is ended. */
const closePatienceS = 2;

export function createWorkerKeeper(parts: WorkerKeeperParts): WorkerKeeper {
  const { scheduler, startWorker, heard, restarted, lost } = parts;
  const waiting = new Map<number, (answer: FromWorker | null) => void>();
  let nextId = 1;
  let hasSpoken = false;
  let unanswered = 0;
  let failures = 0;
  let waitingForStart: (() => void)[] = [];
  let closing: (() => void) | null = null;
  let worker: ProbeWorker | null = start();

  function start(): ProbeWorker {
    const started = startWorker();
    hasSpoken = false;
    unanswered = 0;
    started.on((raw) => {
      if (started === worker) hear(raw);
    });
    started.onExit(() => {
      if (started === worker) ended();
    });
    return started;
  }

  function tellStarted(): void {
    const told = waitingForStart;
    waitingForStart = [];
    for (const resolve of told) resolve();
  }

  function hear(raw: unknown): void {
    const parsed = fromWorkerSchema.safeParse(raw);
    if (!parsed.success) return;
    const message = parsed.data;
    hasSpoken = true;
    unanswered = 0;
    if (message.type === 'pong') {
      failures = 0;
      return;
    }
    if ('id' in message) {
      waiting.get(message.id)?.(message);
      waiting.delete(message.id);
    }
    heard(message);
  }

  function ended(): void {
    worker = null;
    for (const resolve of waiting.values()) resolve(null);
    waiting.clear();
    if (closing !== null) {
      closing();
      return;
    }
    lost();
    const delayS = restartDelaysS[Math.min(failures, restartDelaysS.length - 1)] ?? 5;
    failures += 1;
    scheduler.after(delayS, () => {
      if (closing !== null) return;
      worker = start();
      restarted();
      tellStarted();
    });
  }

  const stopPinging = scheduler.every(pingEveryS, () => {
    if (worker === null || closing !== null) return;
    if (unanswered >= (hasSpoken ? mostUnanswered : mostUnansweredAtStart)) {
      unanswered = 0;
      worker.kill();
      return;
    }
    unanswered += 1;
    worker.post({ type: 'ping', count: unanswered } satisfies ToWorker);
  });

  return {
    post: (message) => worker?.post(message),
    isReady: () => worker !== null && hasSpoken,
    async ask(question, kind) {
      if (worker === null && closing === null) {
        await new Promise<void>((resolve) => waitingForStart.push(resolve));
      }
      const asked = worker;
      if (asked === null || closing !== null) return null;
      const id = nextId;
      nextId += 1;
      return new Promise((resolve) => {
        waiting.set(id, (answer) => resolve(isAnswer(answer, kind) ? answer : null));
        asked.post({ ...question, id });
      });
    },
    async close() {
      stopPinging();
      const last = worker;
      if (last === null) {
        closing = () => {};
        tellStarted();
        return;
      }
      await new Promise<void>((resolve) => {
        closing = resolve;
        last.post({ type: 'close' } satisfies ToWorker);
        const cancel = scheduler.after(closePatienceS, () => last.kill());
        last.onExit(cancel);
      });
    },
  };
}

function isAnswer<K extends Answer<FromWorker['type']>['type']>(
  answer: FromWorker | null,
  kind: K,
): answer is Answer<K> {
  return answer?.type === kind;
}
