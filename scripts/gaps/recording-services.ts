import { fork } from 'node:child_process';
import { once } from 'node:events';
import {
  defaultRunSettings,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type Result,
  type ServiceProblem,
  serialSourceSchema,
} from '#shared-core';

/** Services in a process of their own. */
export interface RecordingServices {
  /** The answer; a refusal ends the measurement. */
  ask<N extends RequestName>(name: N, body: RequestBody<N>): Promise<RequestAnswer<N>>;
  /** Records what a probe writes on this port, as plain text; the id of the run. */
  record(path: string): Promise<string>;
  /** The longest piece of work that the services did without a look at the record, since last asked [ms of the processor]. */
  longestPieceMs(): Promise<number>;
  /** Up to which run time all is on the disk [s], and when that was so by the computer's monotonic clock [s]. */
  saved(): Promise<Saved>;
  /** Ends it as the system does with a program that asks for too much memory: at once, and unasked. */
  kill(): Promise<void>;
  close(): Promise<void>;
}

export interface Saved {
  readonly savedToS: number | null;
  readonly atS: number;
}

/** No requests of the contract: what the measured program says of itself. */
export const longestPieceRequest = 'longest-piece';
export const savedRequest = 'saved';

interface Answered {
  readonly id: number;
  readonly result: Result<unknown, ServiceProblem>;
}

export async function startRecordingServices(runsFolder: string): Promise<RecordingServices> {
  const child = fork(new URL('./recording-program.ts', import.meta.url), [runsFolder], {
    execArgv: ['--import', 'tsx'],
  });
  const waiting = new Map<number, (result: Answered['result']) => void>();
  let nextId = 1;
  await once(child, 'message');
  child.on('message', (message) => {
    const { id, result } = message as Answered;
    waiting.get(id)?.(result);
    waiting.delete(id);
  });
  async function send(name: string, body: unknown): Promise<unknown> {
    const id = nextId;
    nextId += 1;
    const result = await new Promise<Answered['result']>((resolve) => {
      waiting.set(id, resolve);
      child.send({ id, name, body });
    });
    if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.error)}`);
    return result.value;
  }

  const ask = <N extends RequestName>(name: N, body: RequestBody<N>) =>
    send(name, body) as Promise<RequestAnswer<N>>;

  return {
    ask,
    async record(path) {
      const source = serialSourceSchema.parse({ kind: 'serial', path, language: 'plain-text' });
      await ask('probe/connect', { source });
      return (await ask('run/start', { settings: defaultRunSettings })).runId;
    },
    longestPieceMs: () => send(longestPieceRequest, {}) as Promise<number>,
    saved: () => send(savedRequest, {}) as Promise<Saved>,
    async kill() {
      const ended = once(child, 'exit');
      child.kill('SIGKILL');
      await ended;
    },
    async close() {
      const ended = once(child, 'exit');
      child.disconnect();
      await ended;
    },
  };
}
