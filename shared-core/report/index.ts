export type { Block, DocumentTable, PrintedDocument } from './document.ts';
export { intervalWords, measuredWords } from './measured-words.ts';
export type { RunPlateau } from './plateau-of-run.ts';
export type { RunPlates } from './plates-of-run.ts';
export { type ProcessedRow, processedRows, processingStepS } from './processed-rows.ts';
export { reportOf } from './report-of.ts';
export { type RunStudy, type RunToStudy, studyRun } from './study-run.ts';
export { markingSheetOf, worksheetOf } from './worksheet-of.ts';
