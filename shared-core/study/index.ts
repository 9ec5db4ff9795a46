/** A run looked into afterwards: its plateau, plates, verdicts and books, which pages, figures and questions tell of. */
export type { FermentBalance } from './ferment-balance.ts';
export { processingStepS } from './head-course.ts';
export { leastPlateauS, plateauBandK, plateauOfRun } from './plateau-of-run.ts';
export { type RunPlates, unmeasuredBeforeMain } from './plates-of-run.ts';
export { processedRows } from './processed-rows.ts';
export { type ColumnKind, kindWords, runKind } from './run-kind.ts';
export { originOf } from './run-origin.ts';
export { type FermentStudy, studyFerment } from './study-ferment.ts';
export { type RunStudy, studyRun } from './study-run.ts';
