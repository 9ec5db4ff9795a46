import {
  type Alarm,
  contractLimits,
  type MarkBody,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type RunSettings,
} from '#shared-core';
import type { ConnectedService } from '../service/index.ts';
import type { BenchStore } from '../stores/index.ts';

/** What a person can have done. Each says whether it worked; a failure is put before the person. */
export interface Commands {
  /** Asks the services for anything; null where it could not be. */
  readonly ask: <N extends RequestName>(
    name: N,
    body: RequestBody<N>,
  ) => Promise<RequestAnswer<N> | null>;
  readonly mark: (mark: MarkBody) => Promise<boolean>;
  readonly acknowledge: (alarm: Alarm) => Promise<boolean>;
  readonly putAside: (alarm: Alarm) => Promise<boolean>;
  readonly connect: (source: RequestBody<'probe/connect'>['source']) => Promise<boolean>;
  readonly disconnect: () => Promise<boolean>;
  readonly start: (settings: RunSettings) => Promise<boolean>;
  readonly goOn: (runId: string) => Promise<boolean>;
  readonly stop: () => Promise<boolean>;
  readonly makeFolderAnew: () => Promise<boolean>;
  readonly openSecondScreen: () => Promise<boolean>;
}

export function createCommands(service: ConnectedService, bench: BenchStore): Commands {
  const ask: Commands['ask'] = async (name, body) => {
    const answer = await service.request(name, body);
    if (answer.ok) return answer.value;
    // A later wish took its place: there is nothing for the person to do again.
    if (answer.error.kind !== 'superseded') {
      bench.getState().dispatch({ type: 'problem', problem: answer.error });
    }
    return null;
  };
  const have = async <N extends RequestName>(name: N, body: RequestBody<N>): Promise<boolean> =>
    (await ask(name, body)) !== null;
  const mark = (body: MarkBody) => have('run/mark', { mark: body });
  return {
    ask,
    mark,
    acknowledge: (alarm) => mark({ type: 'alarm-acknowledged', alarm }),
    putAside: (alarm) => mark({ type: 'alarm-shelved', alarm, forS: contractLimits.promptAsideS }),
    connect: (source) => have('probe/connect', { source }),
    disconnect: () => have('probe/disconnect', {}),
    start: (settings) => have('run/start', { settings }),
    goOn: (runId) => have('run/continue', { runId }),
    stop: () => have('run/stop', {}),
    makeFolderAnew: () => have('folder/make-anew', {}),
    openSecondScreen: () => have('app/open-second-screen', {}),
  };
}
