/** A measured or derived number with its standard uncertainty, both in one unit (JCGM 100, 2.3.1). */
export interface Quantity {
  readonly value: number;
  /** ≥ 0; 0 for a number that is exact by definition. */
  readonly standardUncertainty: number;
}
