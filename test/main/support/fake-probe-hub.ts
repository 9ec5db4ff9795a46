import type { ProbeHub, ProbeListeners } from '#main';
import {
  fail,
  type MarkBody,
  type ProbeSource,
  type ProbeStatus,
  type ServiceProblem,
  serialSourceSchema,
  succeed,
} from '#shared-core';
import { noProbeStatus } from '../../../main/probe/probe-status.ts';
import { demoSourceSchema } from '../../../shared-core/contract/probe-schemas.ts';

/** A probe hub whose readings the test makes. */
export interface FakeProbeHub extends ProbeHub {
  send<N extends keyof ProbeListeners>(name: N, ...body: Parameters<ProbeListeners[N]>): void;
  /** How far the readings are told; infinite until the test says otherwise. */
  heardTo(timeS: number): void;
  /** What connecting is refused with from now on; null when it is not. */
  refuse(problem: ServiceProblem | null): void;
  /** What happens each time while a probe is being connected. */
  whileConnecting(act: () => void): void;
  readonly followed: MarkBody['type'][];
  readonly calls: string[];
}

export function createFakeProbeHub(timeScale = 1): FakeProbeHub {
  const source: ProbeSource =
    timeScale === 1
      ? serialSourceSchema.parse({ kind: 'serial', path: '/dev/ttyACM0' })
      : demoSourceSchema.parse({ kind: 'demo', timeScale });
  let status: ProbeStatus = {
    ...noProbeStatus,
    state: 'hearing',
    source,
    channels: ['head'],
    readingsPerS: 1,
  };
  const listeners = new Map<string, Set<(...body: never[]) => void>>();
  const followed: MarkBody['type'][] = [];
  const calls: string[] = [];
  let refusal: ServiceProblem | null = null;
  let connecting = () => {};
  let heardUpToS = Number.POSITIVE_INFINITY;
  return {
    followed,
    calls,
    heardTo(timeS) {
      heardUpToS = timeS;
    },
    status: () => status,
    heardUpToS: () => heardUpToS,
    listPorts: async () => [],
    refuse(problem) {
      refusal = problem;
    },
    whileConnecting(act) {
      connecting = act;
    },
    async connect(next) {
      connecting();
      if (refusal !== null) return fail(refusal);
      status = { ...status, source: next };
      return succeed(status);
    },
    find: async () => succeed({ source: null, heard: [], because: 'Nothing was heard.' }),
    async disconnect() {
      status = { ...status, source: null, state: 'none' };
    },
    on(name, listener) {
      const ofName = listeners.get(name) ?? new Set();
      listeners.set(name, ofName);
      ofName.add(listener);
      return () => ofName.delete(listener);
    },
    followMark: (mark) => followed.push(mark.mark.type),
    suspend: async () => void calls.push('suspend'),
    resume: async () => void calls.push('resume'),
    close: async () => void calls.push('close'),
    send(name, ...body) {
      for (const listener of listeners.get(name) ?? []) listener(...(body as unknown as never[]));
    },
  };
}
