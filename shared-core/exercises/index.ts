export {
  type Exercise,
  type ExerciseAnswer,
  type ExerciseLevel,
  exerciseLevels,
} from './exercise.ts';
export { exercisesOf } from './exercises-of.ts';
