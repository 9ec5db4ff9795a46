import type { PlanRequest, RunPlan } from '#shared-core';
import { useWorkedOut } from '../parts/index.ts';
import { whenTypingPauses } from './when-typing-pauses.ts';

export interface PlanState {
  readonly plan: RunPlan | null;
  /** The plan in view is older than the entries. */
  readonly isMaking: boolean;
}

const planning = whenTypingPauses<PlanRequest, RunPlan>(
  () => new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' }),
);

/** The plan for a request, made beside the window; the last plan stays in view meanwhile. */
export function usePlan(request: PlanRequest | null): PlanState {
  const { result, isMaking } = useWorkedOut(request, planning);
  return { plan: result, isMaking };
}
