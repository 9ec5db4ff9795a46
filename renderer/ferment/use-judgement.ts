import { useMemo } from 'react';
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
  pauseMs: 0,
};

/** What the readings of a ferment say, worked out beside the window; null until it is there. */
export function useJudgement(ferment: KeptFerment | null): FermentVerdict | null {
  const request = ferment && {
    readings: readingsOfFerment(ferment),
    facts: factsOfFerment(ferment.stated),
  };
  const { result, isMaking } = useWorkedOut<JudgeRequest, Judged>(request, judging);
  useMemo(() => learnWording(result?.wording ?? {}), [result]);
  // A verdict on the log as it was before is none.
  return ferment === null || isMaking ? null : (result?.verdict ?? null);
}
