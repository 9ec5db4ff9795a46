export { platinumResistanceOhm, platinumSlopeOhmPerK, platinumTemperatureC } from './platinum.ts';
