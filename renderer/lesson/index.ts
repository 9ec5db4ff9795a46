/** The lesson around a run: when the bell goes and what is done by then. */
export { Countdown } from './countdown.tsx';
export { LessonRows } from './lesson-rows.tsx';
export { PlannedLesson } from './planned-lesson.tsx';
