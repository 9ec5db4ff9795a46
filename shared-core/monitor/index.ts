export { analyseRun } from './analyse-run.ts';
export {
  type AlarmDefinition,
  alarmCatalogue,
  alarmDefinitions,
  alarmTitles,
  mostUrgentFirst,
  type RetiredAlarm,
  retiredAlarms,
} from './call/index.ts';
export { createMonitor, type MonitorOptions } from './create-monitor.ts';
export { modelVersion } from './model-version.ts';
export * from './monitor.ts';
