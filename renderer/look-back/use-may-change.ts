import type { RunSummary } from '#shared-core';
import { useBench } from '../parts/index.ts';
import { mayCommand } from '../stores/index.ts';

/** Whether this window may name or remove the run: not while it is being recorded. */
export function useMayChange(run: Pick<RunSummary, 'ended'>): boolean {
  const canAct = useBench(mayCommand);
  return canAct && run.ended !== 'recording';
}
