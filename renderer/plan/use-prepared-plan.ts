import type { PlanRequest } from '#shared-core';
import { useDraftFields } from '../draft/index.ts';
import { numberFrom } from '../words/index.ts';
import { planRequestFrom } from './plan-request-from.ts';
import { type PlanState, usePlan } from './use-plan.ts';

export interface PreparedPlan extends PlanState {
  /** Null while an entry is missing that the plan needs. */
  readonly request: PlanRequest | null;
}

/** The plan of what stands in the form: made once for every part of Prepare that shows it. */
export function usePreparedPlan(): PreparedPlan {
  const { settings, numberField } = useDraftFields();
  const drip = numberField('dripRateMlPerMin');
  const dripRate = numberFrom(drip.text);
  const request =
    settings.ok && dripRate !== null && drip.problem === undefined
      ? planRequestFrom(settings.value, dripRate)
      : null;
  return { request, ...usePlan(request) };
}
