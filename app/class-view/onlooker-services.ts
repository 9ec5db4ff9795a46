import { createEventHub } from '#main';
import {
  type EventBody,
  type EventName,
  fail,
  type RequestAnswer,
  type RequestName,
  type Result,
  type ServiceProblem,
  succeed,
} from '#shared-core';
import type { ServiceHandler } from '../service-handler.ts';
import {
  inputsWithoutNames,
  pageWithoutNames,
  probeWithoutNames,
  recordingWithoutNames,
} from './without-names.ts';

export interface OnlookerServices extends ServiceHandler {
  /** Stops telling. */
  close(): void;
}

type Told = { readonly [N in EventName]?: EventBody<N> };

/** A class needs no more, and thirty screens cost what one window does. */
const tellEveryMs = 1000;
const onlooker = { mayCommand: false } as const;
const refused = fail({ kind: 'viewer-may-not-command' } as const);
/** What a window asks for at its start and an onlooker has no business with. */
const nothingThere: Readonly<Partial<Record<RequestName, unknown>>> = {
  'ports/list': { ports: [] },
  'rigs/list': { last: null, rigs: [], hasRehearsed: true },
  'runs/list': { runs: [] },
};

/**
 * The services as a pupil's own screen sees them: the run under way without names, told once a second. What is not listed here does
 * not exist for it, so a request that is added to the contract is shut out until somebody lets it in.
 */
export function createOnlookerServices(services: ServiceHandler): OnlookerServices {
  let runId: string | null = null;
  let told: Told = {};
  const { emit, on } = createEventHub();

  const ask = <N extends RequestName>(name: N, body: unknown) =>
    services.handle(name, body, onlooker) as Promise<Result<RequestAnswer<N>, ServiceProblem>>;
  void ask('run/status', {}).then((answer) => {
    if (answer.ok) runId ??= answer.value.runId;
  });

  function tell(): void {
    const { probe, inputs, snapshot } = told;
    told = {};
    if (probe) emit('probe', probe);
    if (inputs) emit('inputs', inputs);
    if (snapshot) emit('snapshot', snapshot);
  }

  const timer = setInterval(tell, tellEveryMs);
  const endings = [
    services.on('recording', (recording) => {
      tell();
      runId = recording.runId;
      emit('recording', recordingWithoutNames(recording));
    }),
    services.on('probe', (probe) => {
      told = { ...told, probe: probeWithoutNames(probe) };
    }),
    services.on('snapshot', (snapshot) => {
      told = { ...told, snapshot };
    }),
    services.on('inputs', (added) => {
      const inputs = inputsWithoutNames(added.inputs);
      const before = told.inputs?.runId === added.runId ? told.inputs : null;
      told = {
        ...told,
        inputs: before
          ? { ...before, inputs: [...before.inputs, ...inputs] }
          : { ...added, inputs },
      };
    }),
  ];

  async function answer(name: string, body: unknown): Promise<Result<unknown, ServiceProblem>> {
    if (Object.hasOwn(nothingThere, name)) return succeed(nothingThere[name as RequestName]);
    switch (name) {
      case 'app/describe': {
        const described = await ask(name, body);
        if (!described.ok) return described;
        const { version, modelVersion, shell } = described.value;
        return succeed({
          version,
          modelVersion,
          shell,
          platform: '',
          runsFolder: '',
          mayCommand: false,
          secondScreen: null,
          onlooker: true,
        });
      }
      case 'probe/status': {
        const status = await ask(name, body);
        return status.ok ? succeed(probeWithoutNames(status.value)) : status;
      }
      case 'run/status': {
        const status = await ask(name, body);
        return status.ok ? succeed(recordingWithoutNames(status.value)) : status;
      }
      case 'runs/read': {
        if (!isRunUnderWay(body)) return refused;
        const page = await ask(name, body);
        return page.ok ? succeed(pageWithoutNames(page.value)) : page;
      }
      case 'runs/changes':
        return isRunUnderWay(body) ? ask(name, body) : refused;
      default:
        return refused;
    }
  }

  function isRunUnderWay(body: unknown): boolean {
    return runId !== null && typeof body === 'object' && body !== null && 'runId' in body
      ? body.runId === runId
      : false;
  }

  return {
    handle: (name, body) => answer(name, body),
    on,
    close() {
      clearInterval(timer);
      for (const end of endings) end();
    },
  };
}
