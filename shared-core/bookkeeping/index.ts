/** What a run comes to: liquids, cuts, balance, yield, plates. */
export { type ApparentPlates, apparentPlates } from './apparent-plates.ts';
export type { Balance } from './balance-batch.ts';
export { benchUncertainty } from './bench-uncertainty.ts';
export { type BookEntries, bookEntriesSchema, quantitySchema } from './book-entries.ts';
export type { BookedLiquid } from './book-liquid.ts';
export { type BookedCut, booksOfRun, type RunBooks } from './books-of-run.ts';
export { cutsOfRun } from './cuts-of-run.ts';
export {
  type FermentYield,
  gayLussacGPerG,
  hexoseFromSucroseGPerG,
  hexoseMolarMassGPerMol,
  pasteurEthanolGPerG,
} from './ferment-yield.ts';
export type { FromFerment } from './from-ferment.ts';
export { strengthByMark } from './liquids-measured.ts';
export {
  atStandardPressureC,
  type HeadPoint,
  longestPlateau,
  type PlateauStatistics,
  plateauStatistics,
  type TimeSpan,
} from './plateau-statistics.ts';
export type { PooledLiquid } from './pool-liquids.ts';
export { type DerivedQuantity, propagateUncertainty } from './propagate-uncertainty.ts';
export type { Quantity } from './quantity.ts';
export { type SimpleDistillation, simpleDistillation } from './simple-distillation.ts';
