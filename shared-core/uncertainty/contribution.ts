/** How a contribution's error is thought to be spread (JCGM 100, 4.3). */
export type Distribution = 'normal' | 'rectangular' | 'triangular';

/** One doubt about an input of a measurement. */
export interface Contribution {
  /** What is doubted, in words a person can read. */
  readonly name: string;
  readonly distribution: Distribution;
  /** Standard uncertainty of the input [unit of the input], ≥ 0. */
  readonly inputStandardUncertainty: number;
  /** Change of the result per unit of the input [unit of the result / unit of the input]. */
  readonly sensitivity: number;
  /** Where the number comes from. */
  readonly reason: string;
}

/** A contribution carried to the result. */
export interface BudgetLine extends Contribution {
  /** |sensitivity| × input standard uncertainty [unit of the result]. */
  readonly standardUncertainty: number;
  /** Part of the combined variance, 0 … 1; the shares add up to 1. */
  readonly share: number;
}
