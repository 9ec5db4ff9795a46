export { checkRuns, type RunCheck } from './check-runs.ts';
export { cutTornTail } from './cut-torn-tail.ts';
export { type FolderLock, lockFolder } from './folder-lock.ts';
export { type ImportSetup, importRun } from './import-run.ts';
export { emptyReport, type ReadReport, readRunLog } from './read-run-log.ts';
export {
  createRunLibrary,
  type LiveView,
  pageInputs,
  type RunFolder,
  type RunLibrary,
} from './run-library.ts';
export type { RunToExport } from './run-to-export.ts';
export { type SummarisedRun, summariseRun } from './summarise-run.ts';
export type { KnownRun } from './summary-store.ts';
