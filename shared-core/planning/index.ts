/** What to expect of a charge before it is heated. */
export { planCoverage } from './estimate-from.ts';
export { benchOf, drawHalfRun } from './half-run.ts';
export {
  type Beside,
  forecastHalfWay,
  type InstrumentGains,
  instrumentGains,
} from './instrument-gains.ts';
export type { PlanRequest } from './plan-request.ts';
export { planRun } from './plan-run.ts';
export { rigAsKnown } from './rig-as-known.ts';
export type { RunPlan } from './run-plan.ts';
