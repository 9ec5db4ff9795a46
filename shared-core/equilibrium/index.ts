/** Ethanol and water, liquid and vapour: boiling, dew, azeotrope. */

export { logActivityCoefficients } from './activity-coefficients.ts';
export { azeotrope } from './azeotrope.ts';
export { azeotropeSlopeKPerKPa } from './azeotrope-slope.ts';
export { boilingState } from './boiling-state.ts';
export { bubblePoint, solveBubblePoint } from './bubble-point.ts';
export { bubblePressureKPa } from './bubble-pressure.ts';
export { dewPoint, solveDewPoint } from './dew-point.ts';
export { equilibriumModelVersion } from './equilibrium-model-version.ts';
export { headVapour } from './head-vapour.ts';
export { headVapourTable } from './head-vapour-table.ts';
export { limitTemperatureC } from './limit-temperature.ts';
export { equilibriumModelUncertaintyK } from './model-uncertainty.ts';
export { type NrtlParameters, nrtlParameters } from './nrtl-parameters.ts';
export { publishedAzeotrope } from './published-azeotrope.ts';
export {
  type Component,
  logSaturationPressure,
  saturationPressureKPa,
} from './saturation-pressure.ts';
export { saturationTemperatureC } from './saturation-temperature.ts';
