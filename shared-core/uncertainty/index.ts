/** Standard uncertainties combined, intervals made of them. */
export { type CombinedUncertainty, combineContributions } from './combine-contributions.ts';
export type { BudgetLine, Contribution, Distribution } from './contribution.ts';
export { coverageFactor90, coverageFactor95 } from './coverage-factor.ts';
export { type Estimate, estimateSchema, mapEstimate } from './estimate.ts';
export { median } from './median.ts';
export { standardFromHalfWidth } from './standard-from-half-width.ts';
export { standardFromNinety } from './standard-from-ninety.ts';
export { weightedQuantiles } from './weighted-quantiles.ts';
