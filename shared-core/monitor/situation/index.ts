/** What the head is doing, second by second, and how far the limit is. */
export { createHeadCourse } from './head-course.ts';
export { createLimitScale } from './limit-scale.ts';
export { normalCumulative } from './normal.ts';
