export { analyseRun } from './analyse-run.ts';
export { createMonitor } from './create-monitor.ts';
export * from './monitor.ts';
