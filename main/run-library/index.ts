/** Recorded runs: kept, listed, read, imported. */

export { checkRuns, type RunCheck } from './check-runs.ts';
export { cutTornTail } from './cut-torn-tail.ts';
export { type FolderLock, lockFolder } from './folder-lock.ts';
export { type ImportRequest, importRun, type NewRunSetup } from './import-run.ts';
export type { TimeDoubt } from './judge-times.ts';
export { createLeftOut, type LeftOut } from './left-out.ts';
export { localIso } from './local-iso.ts';
export { createPackedInputs } from './packed-inputs.ts';
export { asRecorded, type RecordedConclusions } from './read-changes.ts';
export { emptyReport, type ReadReport, readRunLog } from './read-run-log.ts';
export type { RunFolder } from './run-folders.ts';
export { createRunLibrary, type RunLibrary } from './run-library.ts';
export { type LiveView, pageInputs } from './run-pages.ts';
export { runProblem } from './run-problem.ts';
export { type RunSoFar, readRunSoFar } from './run-so-far.ts';
export type { RunToExport } from './run-to-export.ts';
export { type SummarisedRun, summariseRun } from './summarise-run.ts';
export type { KnownRun } from './summary-store.ts';
export { createUploads, type Uploads } from './upload.ts';
