import {
  type Alarm,
  contractLimits,
  type MarkBody,
  type RequestBody,
  type RequestName,
  type RunSettings,
} from '#shared-core';
import type { ConnectedService } from '../service/index.ts';
import type { BenchStore } from '../stores/index.ts';

/** What a person can have done. Each says whether it worked; a failure is put before the person. */
export interface Commands {
  readonly mark: (mark: MarkBody) => Promise<boolean>;
  readonly acknowledge: (alarm: Alarm) => Promise<boolean>;
  readonly putAside: (alarm: Alarm) => Promise<boolean>;
  readonly connect: (source: RequestBody<'probe/connect'>['source']) => Promise<boolean>;
  readonly disconnect: () => Promise<boolean>;
  readonly start: (settings: RunSettings) => Promise<boolean>;
  readonly goOn: (runId: string) => Promise<boolean>;
  readonly stop: () => Promise<boolean>;
  readonly openSecondScreen: () => Promise<boolean>;
}

export function createCommands(service: ConnectedService, bench: BenchStore): Commands {
  const ask = async <N extends RequestName>(name: N, body: RequestBody<N>): Promise<boolean> => {
    const answer = await service.request(name, body);
    if (!answer.ok) bench.getState().dispatch({ type: 'problem', problem: answer.error });
    return answer.ok;
  };
  const mark = (body: MarkBody) => ask('run/mark', { mark: body });
  return {
    mark,
    acknowledge: (alarm) => mark({ type: 'alarm-acknowledged', alarm }),
    putAside: (alarm) => mark({ type: 'alarm-shelved', alarm, forS: contractLimits.promptAsideS }),
    connect: (source) => ask('probe/connect', { source }),
    disconnect: () => ask('probe/disconnect', {}),
    start: (settings) => ask('run/start', { settings }),
    goOn: (runId) => ask('run/continue', { runId }),
    stop: () => ask('run/stop', {}),
    openSecondScreen: () => ask('app/open-second-screen', {}),
  };
}
