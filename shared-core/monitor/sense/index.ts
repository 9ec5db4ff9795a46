/** The head's readings freed of faults, with their noise. */
export { createHeadTracker } from './head-tracker.ts';
