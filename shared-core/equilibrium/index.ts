export { activityCoefficients, type LiquidState } from './activity-coefficients.ts';
export { azeotrope } from './azeotrope.ts';
export { bubblePoint, type MixtureAtPressure } from './bubble-point.ts';
export { bubblePressure, bubblePressureKPa } from './bubble-pressure.ts';
export { dewPoint } from './dew-point.ts';
export { type Component, saturationPressureKPa } from './saturation-pressure.ts';
export { saturationTemperatureC } from './saturation-temperature.ts';
