export type { RunPlateau } from './plateau-of-run.ts';
export type { RunPlates } from './plates-of-run.ts';
export { type ProcessedRow, processedRows, processingStepS } from './processed-rows.ts';
export { type RunStudy, type RunToStudy, studyRun } from './study-run.ts';
