export {
  type ApparentPlates,
  apparentPlates,
  type ColumnAtWork,
} from './apparent-plates.ts';
export { type Balance, type BatchBalance, type BatchBooks, balanceBatch } from './balance-batch.ts';
export { type BookEntries, bookEntriesSchema } from './book-entries.ts';
export {
  type AmountMeasurement,
  type BookedLiquid,
  bookLiquid,
  type LiquidMeasurement,
  type PooledLiquid,
  poolLiquids,
} from './book-liquid.ts';
export {
  type BookedCut,
  booksOfRun,
  type MeasuredLiquid,
  type RunBooks,
  type RunToBook,
} from './books-of-run.ts';
export { type CutRecord, cutsOfRun } from './cuts-of-run.ts';
export {
  type FermentYield,
  fermentYield,
  gayLussacGPerG,
  hexoseFromSucroseGPerG,
  hexoseMolarMassGPerMol,
  pasteurEthanolGPerG,
} from './ferment-yield.ts';
export { type LiquidsMeasured, liquidsMeasured, type PartlyMeasured } from './liquids-measured.ts';
export {
  atStandardPressureC,
  type HeadPoint,
  longestPlateau,
  type PlateauStatistics,
  plateauStatistics,
  type TimeSpan,
} from './plateau-statistics.ts';
export {
  type DerivedQuantity,
  type MeasuredInput,
  propagateUncertainty,
} from './propagate-uncertainty.ts';
export type { Quantity } from './quantity.ts';
export { type SimpleDistillation, simpleDistillation } from './simple-distillation.ts';
export {
  measuredStrength,
  type SharedInstrument,
  type StrengthMeasurement,
} from './strength-measurement.ts';
