export { Countdown } from './countdown.tsx';
export { LessonRows } from './lesson-rows.tsx';
export { PlannedLesson } from './planned-lesson.tsx';
