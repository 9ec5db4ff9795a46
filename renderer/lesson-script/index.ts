/** What a teacher means to show, ask and have predicted, stage by stage. */
export { ForTheClass } from './for-the-class.tsx';
export { LessonScriptButton } from './lesson-script-button.tsx';
