/** The still as it probably is, and when the main fraction will end. */

export {
  type BatchCourse,
  courseAt,
  distillateAt,
  emptyCourse,
  runCourse,
} from './batch-course.ts';
export { heatWalkPerS } from './course-clock.ts';
export { createTwin, type Twin } from './create-twin.ts';
export {
  heightModelSdK,
  potSdK,
  receiverEveryS,
  receiverSdMl,
} from './instrument-readings.ts';
export { headAheadS, remainingModelShare, type TwinOutlook } from './look-ahead.ts';
export { headModelErrsForS, headModelSdK, type Observation } from './observations.ts';
export { type OffsetDoubt, potOffset, potReading } from './pot-reading.ts';
export {
  drawWalk,
  guessPrior,
  type HeatUp,
  type StillGuess,
  statedHeatLogSd,
  statedHeatW,
  toGuess,
} from './still-guess.ts';
export { ownWidening, widenedRange } from './widened-range.ts';
