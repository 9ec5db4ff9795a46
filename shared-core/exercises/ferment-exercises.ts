import type { FermentStudy } from '../study/index.ts';
import type { Exercise, ExerciseLevel } from './exercise.ts';
import { fallOfGravity, fastestDay, neverSealed, sugarToAlcohol } from './ferment-school.ts';
import { ballingBalance, gasToEthanol, strengthDoubt, yieldOfSugar } from './ferment-university.ts';

type Maker = (study: FermentStudy) => Exercise | null;

/** In the order of the lesson. */
const makers: Readonly<Record<ExerciseLevel, readonly Maker[]>> = {
  school: [fallOfGravity, fastestDay, sugarToAlcohol, neverSealed],
  undergraduate: [ballingBalance, strengthDoubt, yieldOfSugar, gasToEthanol],
};

/**
 * Questions about a ferment's week with worked answers from its record: how much sugar became alcohol. A question whose data the week
 * lacks is not asked.
 *
 * @param study from `studyFerment`; level: school or undergraduate
 * @returns questions in the order of the lesson
 *
 * Source: the numbers come from the study, as printed; see the functions named there.
 * @example
 * const kept = { fermentId: 'a', stated: { name: 'Pears', beganAtIso: '2026-05-01T08:00:00Z', volumeMl: 1000, sugarG: null, wentIn: '' }, corrections: [], entries: [], unreadableLines: 0 };
 * fermentExercises(studyFerment({ kept, warmth: { band: null, minutes: [] }, appVersion: '0' }), 'school').map(({ id }) => id) // => ["school-never-sealed"]
 */
export function fermentExercises(study: FermentStudy, level: ExerciseLevel): readonly Exercise[] {
  return makers[level].flatMap((make) => make(study) ?? []);
}
