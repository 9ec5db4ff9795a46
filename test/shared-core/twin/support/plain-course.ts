import { type BatchCourse, emptyCourse } from '../../../../shared-core/twin/batch-course.ts';

/** A course whose numbers can be reckoned by hand: an entry every 100 s, over 1000 s. */
export function plainCourse(
  columns: Partial<
    Record<
      | 'headHeightK'
      | 'potHeightK'
      | 'distillateMl'
      | 'headMoleFraction'
      | 'potMoleFraction'
      | 'potMl',
      (courseS: number) => number
    >
  >,
  waterMlPerS = 0,
): BatchCourse {
  const course = emptyCourse();
  course.count = 11;
  course.stepS = 100;
  course.waterMlPerS = waterMlPerS;
  for (const [column, valueAt] of Object.entries(columns)) {
    for (let at = 0; at < course.count; at += 1) {
      course[column as keyof typeof columns][at] = valueAt(100 * at);
    }
  }
  return course;
}
