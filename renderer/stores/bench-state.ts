import {
  assertNever,
  type EventBody,
  type PortInfo,
  type ProbeStatus,
  type RequestAnswer,
  type ServiceProblem,
} from '#shared-core';
import type { Connection } from '../service/index.ts';

type KnownRigs = RequestAnswer<'rigs/list'>;

/** What is known of the bench: the way to the services, the probe, the recorder. */
export interface BenchState {
  readonly connection: Connection;
  readonly app: RequestAnswer<'app/describe'> | null;
  readonly ports: readonly PortInfo[];
  readonly probe: ProbeStatus | null;
  readonly recording: EventBody<'recording'> | null;
  /** Set-ups of earlier lessons; null until the services have told. */
  readonly rigs: KnownRigs | null;
  /** The last thing that could not be done, until the person has read it. */
  readonly problem: ServiceProblem | null;
}

export type BenchEvent =
  | { readonly type: 'connection'; readonly connection: Connection }
  | { readonly type: 'app'; readonly app: RequestAnswer<'app/describe'> }
  | { readonly type: 'ports'; readonly ports: readonly PortInfo[] }
  | { readonly type: 'probe'; readonly probe: ProbeStatus }
  | { readonly type: 'recording'; readonly recording: EventBody<'recording'> }
  | { readonly type: 'rigs'; readonly rigs: KnownRigs }
  | { readonly type: 'problem'; readonly problem: ServiceProblem }
  | { readonly type: 'problem-read' };

export const unknownBench: BenchState = {
  connection: 'connecting',
  app: null,
  ports: [],
  probe: null,
  recording: null,
  rigs: null,
  problem: null,
};

export function benchAfter(state: BenchState, event: BenchEvent): BenchState {
  switch (event.type) {
    case 'connection':
      return { ...state, connection: event.connection };
    case 'app':
      return { ...state, app: event.app };
    case 'ports':
      return { ...state, ports: event.ports };
    case 'probe':
      return {
        ...state,
        probe: event.probe,
        problem:
          event.probe.state === 'hearing' && isAboutProbe(state.problem) ? null : state.problem,
      };
    case 'recording':
      return {
        ...state,
        recording: event.recording,
        problem: isToldAbove(event.recording, state.problem) ? null : state.problem,
      };
    case 'rigs':
      return { ...state, rigs: event.rigs };
    case 'problem':
      return isToldAbove(state.recording, event.problem)
        ? state
        : { ...state, problem: event.problem };
    case 'problem-read':
      return { ...state, problem: null };
    default:
      return assertNever(event);
  }
}

/** A port that would not open is no news once a probe is heard. */
export function isAboutProbe(problem: ServiceProblem | null): boolean {
  return problem !== null && (problem.kind === 'no-probe' || problem.kind.startsWith('port-'));
}

/**
 * What could not be done since the folder of the runs is gone, or the disk has not taken the run that was stopped: that stands above as
 * long as it is so.
 */
function isToldAbove(
  recording: EventBody<'recording'> | null,
  problem: ServiceProblem | null,
): boolean {
  if (recording === null || problem === null) return false;
  const isFolderGone = recording.problem?.kind === 'folder-gone';
  if (isFolderGone && problem.kind === 'folder-unavailable') return true;
  return recording.notSaved?.some((run) => run.problem.kind === problem.kind) ?? false;
}

/** A viewer, or a window that lost the services, shows but cannot command. */
export function mayCommand(state: BenchState): boolean {
  return state.connection === 'open' && (state.app?.mayCommand ?? false);
}

/** A window for the class. Not yet known counts as no: the first window is the usual one. */
export function isViewer({ app }: BenchState): boolean {
  return app !== null && !app.mayCommand;
}

/** A run goes on even while the disk takes none of it. */
export function isRunUnderWay({ recording }: BenchState): boolean {
  return recording !== null && recording.runId !== null;
}
