import type { PlanRequest, RunPlan } from '#shared-core';

export interface PlanQuestion {
  readonly id: number;
  readonly request: PlanRequest;
}

export interface PlanAnswer {
  readonly id: number;
  /** Null where the request lies outside what can be planned. */
  readonly plan: RunPlan | null;
}
