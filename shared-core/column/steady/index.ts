export {
  type ConstantCompositionBatch,
  type ConstantCompositionYield,
  constantCompositionBatch,
} from './constant-composition-batch.ts';
export { constantRefluxBatch } from './constant-reflux-batch.ts';
export { type EquilibriumCurve, equilibriumCurve } from './equilibrium-curve.ts';
export { fenskeStages } from './fenske-stages.ts';
export { type EquilibriumPoint, interpolatedEquilibrium } from './interpolated-equilibrium.ts';
export { type MinimumReflux, minimumRefluxRatio } from './minimum-reflux-ratio.ts';
export { type BatchSpan, type BatchYield, simpleBatch } from './simple-batch.ts';
export {
  distillateAboveStages,
  type PlateSteps,
  type RectifyingColumn,
  stepPlates,
} from './step-plates.ts';
