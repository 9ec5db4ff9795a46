export { planCoverage } from './estimate-from.ts';
export {
  type CollectingHeat,
  type PlanRequest,
  type PlanUncertainty,
  usualPlanUncertainty,
} from './plan-request.ts';
export { planRun } from './plan-run.ts';
export { type KnownRig, rigAsKnown } from './rig-as-known.ts';
export type {
  CoursePoint,
  FractionPlan,
  NoMainFractionCause,
  PlanVerdict,
  PurityPoint,
  Remedies,
  RunPlan,
} from './run-plan.ts';
