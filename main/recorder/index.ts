/** The record of a run, written so that nothing saved is lost. */

export { type Backlog, createBacklog, type PendingRecord } from './backlog.ts';
export { createLogWriter, type LogWriter } from './log-writer.ts';
export { type LogEnd, makeLogSure } from './next-file.ts';
export { createRecordMemory, type RecordMemory } from './record-memory.ts';
export {
  continueRecorder,
  type Recorder,
  type RecorderSetup,
  type RecorderStatus,
  startRecorder,
} from './recorder.ts';
export { labelsFile, segmentFile, segmentNumber, summaryFile, tornFile } from './run-files.ts';
