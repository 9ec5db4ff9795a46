/** What the drawings of understanding show, as numbers. */
export { type BoilingDiagramPoint, boilingDiagram } from './boiling-diagram.ts';
export { type Booking, collectedAtMl, collectedCourse, dripRateAt } from './collected-course.ts';
export { moleFractionEstimate } from './mole-fraction-estimate.ts';
export { type PlateDiagram, plateDiagram, type StageCount } from './plate-diagram.ts';
export { type PotEstimate, potEstimate } from './pot-estimate.ts';
export { potStrengthFromBalance } from './pot-from-balance.ts';
export { presentReflux, type RefluxEstimate } from './present-reflux.ts';
export { type RecoveryPoint, recoverySoFar, type StrengthMoment } from './recovery-so-far.ts';
