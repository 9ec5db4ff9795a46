export { activityCoefficients, type LiquidState } from './activity-coefficients.ts';
export { azeotrope } from './azeotrope.ts';
export { azeotropeSlopeKPerKPa } from './azeotrope-slope.ts';
export type {
  BelowAzeotropeCause,
  BelowAzeotropeClues,
  Explanation,
} from './below-azeotrope.ts';
export { bubblePointSlopes } from './bubble-curve-slopes.ts';
export { bubblePoint, type MixtureAtPressure } from './bubble-point.ts';
export { bubblePressure, bubblePressureKPa } from './bubble-pressure.ts';
export { dewPoint } from './dew-point.ts';
export { equilibriumModelVersion } from './equilibrium-model-version.ts';
export { type HeadReading, type HeadVapour, headVapour } from './head-vapour.ts';
export { type HeadVapourTable, headVapourTable } from './head-vapour-table.ts';
export { limitTemperatureC } from './limit-temperature.ts';
export { equilibriumModelUncertaintyK } from './model-uncertainty.ts';
export { publishedAzeotrope } from './published-azeotrope.ts';
export { type Component, saturationPressureKPa } from './saturation-pressure.ts';
export { saturationTemperatureC } from './saturation-temperature.ts';
