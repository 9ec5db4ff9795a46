import {
  type FermentVerdict,
  factsOfFerment,
  type KeptFerment,
  learnWording,
  readingsOfFerment,
} from '#shared-core';
import { useWorkedOut } from '../parts/index.ts';
import { type Judged, type JudgeRequest, judged } from './judged.ts';

const judging = {
  makeWorker: () => new Worker(new URL('./judge-worker.ts', import.meta.url), { type: 'module' }),
  // A window that may start no worker stands still for a moment instead.
  instead: judged,
  onArrival: ({ wording }: Judged) => learnWording(wording),
  pauseMs: 0,
};

export interface Judgement {
  /** Null while it is worked out, and where the readings lie outside what can be judged. */
  readonly verdict: FermentVerdict | null;
  readonly isJudging: boolean;
}

/** What the readings of a ferment say, worked out beside the window. */
export function useJudgement(ferment: KeptFerment | null): Judgement {
  const request = ferment && {
    readings: readingsOfFerment(ferment),
    facts: factsOfFerment(ferment.stated),
  };
  const { result, isMaking } = useWorkedOut<JudgeRequest, Judged>(request, judging);
  // A verdict on the log as it was before is none.
  const isJudging = ferment !== null && isMaking;
  const verdict = ferment === null || isMaking ? null : (result?.verdict ?? null);
  return { verdict, isJudging };
}
