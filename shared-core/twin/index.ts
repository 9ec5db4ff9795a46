/** The still as it probably is, and when the main fraction will end. */

export { courseAt, distillateAt, emptyCourse, runCourse } from './batch-course.ts';
export { createTwin, type Twin, type TwinOutlook } from './create-twin.ts';
export type { Observation } from './observations.ts';
export { drawWalk, guessPrior, toGuess } from './still-guess.ts';
