/** What the run is doing, from readings and marks. */
export { analyseRun } from './analyse-run.ts';
export { alarmCatalogue, alarmTitles, mostUrgentFirst } from './call/alarm-catalogue.ts';
export { retiredAlarms } from './call/retired-alarms.ts';
export { estimateEveryS } from './conclude/staging-log.ts';
export { createMonitor } from './create-monitor.ts';
export { heardPressure } from './heard-pressure.ts';
export { createMarksLedger } from './marks-ledger.ts';
export { modelVersion } from './model-version.ts';
export type { Monitor, MonitorChange } from './monitor.ts';
export { pressureAfter } from './pressure-after.ts';
