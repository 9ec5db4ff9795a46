import type { PlanRequest, RunPlan } from '#shared-core';
import { useWorkedOut } from './use-worked-out.ts';

export interface PlanState {
  readonly plan: RunPlan | null;
  /** The plan in view is older than the entries. */
  readonly isMaking: boolean;
}

/** The plan for a request, made beside the window; the last plan stays in view meanwhile. */
export function usePlan(request: PlanRequest | null): PlanState {
  const { result, isMaking } = useWorkedOut<PlanRequest, RunPlan>(request, startPlanWorker);
  return { plan: result, isMaking };
}

function startPlanWorker(): Worker {
  return new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
}
