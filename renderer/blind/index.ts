/** The guess at a covered run, before it is shown. */
export { BlindRun } from './blind-run.tsx';
