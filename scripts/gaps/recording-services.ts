import { fork } from 'node:child_process';
import { once } from 'node:events';
import type { RequestAnswer, RequestBody, RequestName, Result, ServiceProblem } from '#shared-core';

/** Services in a process of their own. */
export interface RecordingServices {
  /** The answer; a refusal ends the measurement. */
  ask<N extends RequestName>(name: N, body: RequestBody<N>): Promise<RequestAnswer<N>>;
  close(): Promise<void>;
}

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
  return {
    async ask<N extends RequestName>(name: N, body: RequestBody<N>) {
      const id = nextId;
      nextId += 1;
      const result = await new Promise<Answered['result']>((resolve) => {
        waiting.set(id, resolve);
        child.send({ id, name, body });
      });
      if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.error)}`);
      return result.value as RequestAnswer<N>;
    },
    async close() {
      const ended = once(child, 'exit');
      child.disconnect();
      await ended;
    },
  };
}
