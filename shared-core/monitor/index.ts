export { analyseRun } from './analyse-run.ts';
export { createMonitor, type MonitorOptions } from './create-monitor.ts';
export { modelVersion } from './model-version.ts';
export * from './monitor.ts';
