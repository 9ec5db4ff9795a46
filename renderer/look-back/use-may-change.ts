import type { RunSummary } from '#shared-core';
import { mayCommand } from '../stores/index.ts';
import { useBench } from '../window/use-stores.ts';

/** Whether this window may name or remove the run: not while it is being recorded. */
export function useMayChange(run: Pick<RunSummary, 'ended'>): boolean {
  const canAct = useBench(mayCommand);
  return canAct && run.ended !== 'recording';
}
