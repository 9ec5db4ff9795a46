import type { RunnerTask } from 'vitest';
import {
  ForksPoolWorker,
  type PoolRunnerInitializer,
  type PoolWorker,
  ThreadsPoolWorker,
} from 'vitest/node';

type Options = ConstructorParameters<typeof ThreadsPoolWorker>[0];
type Request = Parameters<PoolWorker['send']>[0];
type Listener = Parameters<PoolWorker['on']>[1];

/** A process is for what no thread can do: the package that opens serial ports ends a program whose threads use it. */
export type KeptKind = 'thread' | 'process';

/** Every start leaves a listener behind in the worker: a new one now and then keeps them few. */
const runsOfOneWorker = 50;

/**
 * Vitest ends its worker after each run, and a run of one mutant is a second of loading for some milliseconds of tests. This one stays,
 * with everything it has loaded but the test files, until a run goes wrong. Only for code whose modules keep nothing from one test to
 * the next: what a mutant left behind would be counted for the next one.
 */
export function keepWorker(kind: KeptKind): PoolRunnerInitializer {
  let kept: KeptWorker | null = null;
  let runs = 0;
  return {
    name: 'kept-worker',
    createPoolWorker(options) {
      runs += 1;
      if (kept === null || kept.isEnded || runs % runsOfOneWorker === 0) {
        void kept?.end();
        kept = new KeptWorker(kind, options);
      }
      return kept;
    },
  };
}

class KeptWorker implements PoolWorker {
  readonly name = 'kept-worker';
  readonly cacheFs: boolean;
  isEnded = false;
  private readonly worker: PoolWorker;
  private readonly state: Options['project']['vitest']['state'];
  private isAskedToStop = false;
  private readonly listeners: [string, Listener][] = [];

  constructor(kind: KeptKind, options: Options) {
    this.worker = kind === 'thread' ? new ThreadsPoolWorker(options) : new ForksPoolWorker(options);
    this.cacheFs = kind === 'process';
    this.state = options.project.vitest.state;
  }

  start(): Promise<void> {
    return this.worker.start();
  }

  deserialize(data: unknown): unknown {
    return this.worker.deserialize(data);
  }

  on(event: string, listener: Listener): void {
    this.listeners.push([event, listener]);
    this.worker.on(event, listener);
  }

  off(event: string, listener: Listener): void {
    this.worker.off(event, listener);
  }

  send(message: Request): void {
    const { type } = message as { readonly type?: string };
    this.isAskedToStop = type === 'stop';
    if (this.isAskedToStop) this.answer({ type: 'stopped', __vitest_worker_response__: true });
    else this.worker.send(message);
  }

  /**
   * A run that ended well asked first; without that the worker may be stuck. One in which no test came to an end was called off: what
   * a mutant left going on in the worker may call off all that follow, which would count as if no test had seen them.
   */
  async stop(): Promise<void> {
    for (const [event, listener] of this.listeners.splice(0)) this.worker.off(event, listener);
    if (!this.isAskedToStop || !this.state.getFiles().some(hasEnded)) await this.end();
  }

  async end(): Promise<void> {
    if (this.isEnded) return;
    this.isEnded = true;
    await this.worker.stop();
  }

  private answer(message: unknown): void {
    for (const [event, listener] of [...this.listeners]) if (event === 'message') listener(message);
  }
}

function hasEnded(task: RunnerTask): boolean {
  if ('tasks' in task) return task.tasks.some(hasEnded);
  return task.result?.state === 'pass' || task.result?.state === 'fail';
}
