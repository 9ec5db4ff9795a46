import { createMonitor } from '#shared-core';
import type { Clock } from '../../clock/index.ts';
import type { FileLayer } from '../../file-layer/index.ts';
import { createRunLibrary } from '../../run-library/index.ts';
import type { SidePort } from '../../side-process/index.ts';
import { answerRequest } from '../answer-request.ts';
import { createExchange } from '../exchange-handlers.ts';
import { createReadingHandlers, type UnderWay } from '../reading-handlers.ts';
import type { RequestHandlers } from '../request-handlers.ts';
import { type FromDesk, type ToDesk, type ToldRun, toDeskSchema } from './messages.ts';

export interface DeskParts {
  readonly port: SidePort;
  readonly clock: Clock;
  readonly files: FileLayer;
  /** Ends the process once everything is closed. */
  readonly exit: () => void;
}

type Ask = Extract<ToDesk, { readonly type: 'ask' }>;

/** The desk's end: the same handlers that the services have, over a library of its own on the same folder. */
export function serveDesk({ port, clock, files, exit }: DeskParts): void {
  let open: ReturnType<typeof openDesk> | null = null;
  let mayWrite = false;
  let underWay: ToldRun | null = null;
  let notSaved: readonly ToldRun[] = [];
  const post = (message: FromDesk) => port.post(message);
  const recording: UnderWay = {
    current: () => underWay,
    notSaved: () => notSaved,
    liveView: (runId) =>
      [...(underWay ? [underWay] : []), ...notSaved].find((run) => run.runId === runId)?.view,
  };

  function openDesk({ runsFolder, app }: Extract<ToDesk, { readonly type: 'open' }>) {
    const may = () => mayWrite;
    const library = createRunLibrary({ files, clock, runsFolder, mayWrite: may });
    const exchange = createExchange({
      library,
      files,
      clock,
      runsFolder,
      mayWrite: may,
      createMonitor,
      app,
      recording,
      onPack: (progress) => post({ type: 'pack', progress }),
    });
    const handlers: Partial<RequestHandlers> = {
      ...exchange.handlers,
      ...createReadingHandlers({ library, recording }),
    };
    return { handlers, close: exchange.close };
  }

  async function answer({ id, name, body }: Ask): Promise<void> {
    const result = await answerRequest(open?.handlers ?? {}, name, body, { mayCommand: true });
    post({ type: 'answer', id, result });
  }

  port.on((raw) => {
    const message = toDeskSchema.safeParse(raw).data;
    switch (message?.type) {
      case 'open':
        open = openDesk(message);
        return;
      case 'ask':
        ({ mayWrite, underWay, notSaved } = message);
        void answer(message);
        return;
      case 'close':
        void open?.close().then(exit);
        return;
      default:
    }
  });
}
