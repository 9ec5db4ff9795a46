/** A run against the volume of distillate: tables without times, curves, cuts, and what theory expects. */
export type { ExpectedPoint } from './batch-by-volume.ts';
export { type RunByVolume, runByVolume } from './run-by-volume.ts';
export { verdictsByVolume } from './verdicts-by-volume.ts';
export { isVolumeTable, volumeReadings } from './volume-reading.ts';
export { volumeCutWords } from './volume-verdict.ts';
