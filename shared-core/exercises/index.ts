/** Questions for a class, made from its run. */
export { type Exercise, type ExerciseLevel, exerciseLevels } from './exercise.ts';
export { exercisesOf } from './exercises-of.ts';
export { fermentExercises } from './ferment-exercises.ts';
export { partMarks } from './part-marks.ts';
