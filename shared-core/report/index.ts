/** Pages about a run: report, worksheet, tables, their words. */
export { bookTables } from './book-tables.ts';
export type { Block, DocumentTable, PrintedDocument } from './document.ts';
export { fermentSentence } from './ferment-sentence.ts';
export { processingStepS } from './head-course.ts';
export { measuredWords } from './measured-words.ts';
export { plateauBandK, plateauOfRun, type RunPlateau } from './plateau-of-run.ts';
export type { RunPlates } from './plates-of-run.ts';
export { processedRows } from './processed-rows.ts';
export { proofMeaning, proofSightWords } from './proof-words.ts';
export { reportOf } from './report-of.ts';
export { runKind } from './run-kind.ts';
export { originOf } from './run-origin.ts';
export { inDecimals, keepUnits, saidWords } from './said-words.ts';
export { type RunStudy, studyRun } from './study-run.ts';
export { markingSheetOf, worksheetOf } from './worksheet-of.ts';
