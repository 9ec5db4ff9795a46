export { balanceDoubt } from './balance-doubt.ts';
export {
  type DistillateOverTime,
  distillateOverTime,
  type RunToMeasure,
  type VolumeBasis,
} from './distillate-over-time.ts';
export { type BatchToExpect, type ExpectedPoint, expectedCourse } from './expected-course.ts';
export { type RunAgainstVolume, type RunByVolume, runByVolume } from './run-by-volume.ts';
export { verdictsByVolume } from './verdicts-by-volume.ts';
export { type VolumePoint, volumeCourse } from './volume-course.ts';
export { isVolumeTable, type VolumeReading, volumeReadings } from './volume-reading.ts';
export { type VolumeCut, type VolumeVerdict, volumeVerdict } from './volume-verdict.ts';
