import { type EventBody, fail, type Result, type ServiceProblem, worded } from '#shared-core';
import type { Scheduler } from '../../clock/index.ts';
import type { SideProcess } from '../../side-process/index.ts';
import type { AppFacts } from '../app-handlers.ts';
import type { RequestHandlers } from '../request-handlers.ts';
import { type DeskRequest, deskRequests } from './desk-requests.ts';
import { fromDeskSchema, type ToDesk, type ToldRun } from './messages.ts';

export interface DeskSetup {
  readonly startProcess: () => SideProcess;
  readonly scheduler: Scheduler;
  readonly runsFolder: string;
  readonly app: AppFacts;
  readonly mayWrite: () => boolean;
  readonly underWay: () => ToldRun | null;
  readonly notSaved: () => readonly ToldRun[];
  readonly onPack: (progress: EventBody<'pack'>) => void;
}

/** The process that reads, takes in and gives out whole runs, as the services see it. */
export interface Desk {
  readonly handlers: Pick<RequestHandlers, DeskRequest>;
  close(): Promise<void>;
}

/** Asked to close first; a process that does not manage within this is ended. */
const closePatienceS = 2;
const stopped = {
  kind: 'internal',
  message: worded('The part that reads and writes whole runs stopped. Try it once more.'),
} as const;

type Answer = Result<unknown, ServiceProblem>;

/** Starts the process when it is first needed, and anew when it is needed after it ended. */
export function createDesk(setup: DeskSetup): Desk {
  const { startProcess, scheduler, runsFolder, app, mayWrite, underWay, notSaved, onPack } = setup;
  const waiting = new Map<number, (answer: Answer) => void>();
  let desk: SideProcess | null = null;
  let nextId = 1;
  let isClosed = false;

  function start(): SideProcess {
    const started = startProcess();
    started.on((raw) => {
      const message = fromDeskSchema.safeParse(raw).data;
      if (message?.type === 'pack') onPack(message.progress);
      if (message?.type !== 'answer') return;
      waiting.get(message.id)?.(message.result);
      waiting.delete(message.id);
    });
    started.onExit(() => {
      desk = null;
      for (const resolve of waiting.values()) resolve(fail(stopped));
      waiting.clear();
    });
    const { version, modelVersion, shell } = app;
    post(started, { type: 'open', runsFolder, app: { version, modelVersion, shell } });
    return started;
  }

  function post(to: SideProcess, message: ToDesk): void {
    to.post(message);
  }

  async function ask(name: DeskRequest, body: unknown): Promise<Answer> {
    if (isClosed) return fail(stopped);
    desk ??= start();
    const asked = desk;
    const id = nextId;
    nextId += 1;
    return new Promise((resolve) => {
      waiting.set(id, resolve);
      const told = { mayWrite: mayWrite(), underWay: underWay(), notSaved: notSaved() };
      post(asked, { type: 'ask', id, name, body, ...told });
    });
  }

  return {
    // Each answer is the one that the same handler gives there.
    handlers: Object.fromEntries(
      deskRequests.map((name) => [name, (body: unknown) => ask(name, body)]),
    ) as unknown as Desk['handlers'],
    async close() {
      isClosed = true;
      const last = desk;
      if (last === null) return;
      await new Promise<void>((resolve) => {
        const cancel = scheduler.after(closePatienceS, () => last.kill());
        last.onExit(() => {
          cancel();
          resolve();
        });
        post(last, { type: 'close' });
      });
    },
  };
}
