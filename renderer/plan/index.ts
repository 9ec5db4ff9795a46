/** What to expect of a run before any heat. */
export { InstrumentGainsLine } from './instrument-gains-line.tsx';
export { planRequestFrom } from './plan-request-from.ts';
export { PlanSection } from './plan-section.tsx';
export { usePlan } from './use-plan.ts';
export { usePreparedPlan } from './use-prepared-plan.ts';
