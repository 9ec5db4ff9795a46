import type { RunStudy } from '../study/index.ts';
import type { Exercise, ExerciseLevel } from './exercise.ts';
import { schoolExercises } from './school-exercises.ts';
import { undergraduateExercises } from './undergraduate-exercises.ts';

/**
 * Questions about a run with worked answers from its record. A question whose data the run lacks is not asked.
 *
 * @param study from `studyRun`; level: school or undergraduate
 * @returns questions in the order of the lesson
 *
 * Source: the numbers come from the study; acceptance limits are its uncertainties, or what an eye reads off a plot.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * exercisesOf(studyRun(run), 'school').map(({ id }) => id) // => ["school-azeotrope"]
 */
export function exercisesOf(study: RunStudy, level: ExerciseLevel): readonly Exercise[] {
  const makers = level === 'school' ? schoolExercises : undergraduateExercises;
  return makers.flatMap((make) => make(study) ?? []);
}
