export { BlindRun } from './blind-run.tsx';
