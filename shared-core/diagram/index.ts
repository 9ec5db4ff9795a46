/** What the drawings of understanding show, as numbers. */
export { boilingDiagram } from './boiling-diagram.ts';
export { collectedAtMl, collectedCourse } from './collected-course.ts';
export { moleFractionEstimate } from './mole-fraction-estimate.ts';
export { type PlateDiagram, plateDiagram, type StageCount } from './plate-diagram.ts';

export { type StillMoment, stillMomentAt } from './still-moment.ts';
