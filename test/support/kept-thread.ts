import { type PoolRunnerInitializer, ThreadsPoolWorker } from 'vitest/node';

type Request = Parameters<ThreadsPoolWorker['send']>[0];
type Listener = Parameters<ThreadsPoolWorker['on']>[1];

/** Every start of a thread leaves a listener behind in it: a new thread now and then keeps them few. */
const runsOfOneThread = 50;

/**
 * Vitest ends its thread after each run, and a run of one mutant is a second of loading for some milliseconds of tests. This one stays,
 * with everything it has loaded but the test files, until a run goes wrong. Only for code whose modules keep nothing from one test to
 * the next: what a mutant left behind would be counted for the next one.
 */
export function keepThread(): PoolRunnerInitializer {
  let kept: KeptThread | null = null;
  let runs = 0;
  return {
    name: 'kept-thread',
    createPoolWorker(options) {
      runs += 1;
      if (kept === null || kept.isEnded || runs % runsOfOneThread === 0) {
        void kept?.end();
        kept = new KeptThread(options);
      }
      return kept;
    },
  };
}

class KeptThread extends ThreadsPoolWorker {
  override readonly name = 'kept-thread';
  isEnded = false;
  private isAskedToStop = false;
  private readonly listeners: [string, Listener][] = [];

  override on(event: string, listener: Listener): void {
    this.listeners.push([event, listener]);
    super.on(event, listener);
  }

  override send(message: Request): void {
    const { type } = message as { readonly type?: string };
    this.isAskedToStop = type === 'stop';
    if (this.isAskedToStop) this.answer({ type: 'stopped', __vitest_worker_response__: true });
    else super.send(message);
  }

  /** A run that ended well asked first; without that the thread may be stuck. */
  override async stop(): Promise<void> {
    for (const [event, listener] of this.listeners.splice(0)) super.off(event, listener);
    if (!this.isAskedToStop) await this.end();
  }

  async end(): Promise<void> {
    if (this.isEnded) return;
    this.isEnded = true;
    await super.stop();
  }

  private answer(message: unknown): void {
    for (const [event, listener] of [...this.listeners]) if (event === 'message') listener(message);
  }
}
