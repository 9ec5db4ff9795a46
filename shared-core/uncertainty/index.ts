export { type CombinedUncertainty, combineContributions } from './combine-contributions.ts';
export type { BudgetLine, Contribution, Distribution } from './contribution.ts';
export { standardFromHalfWidth } from './standard-from-half-width.ts';
