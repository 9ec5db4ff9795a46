import { requireInRange } from '../result/index.ts';
import { densityKgPerM3 } from './density.ts';
import { sodaLimeGlassExpansionPerK } from './glass-expansion.ts';

/** Three weighings of a pycnometer in air, and the temperatures of both fillings. */
export interface PycnometerWeighings {
  /** Empty and dry [g], > 0. */
  readonly emptyG: number;
  /** Full of water [g]. */
  readonly withWaterG: number;
  /** Full of the sample [g]. */
  readonly withSampleG: number;
  /** Temperature of the water [°C], 0 … 40. */
  readonly waterTemperatureC: number;
  /** Temperature of the sample [°C], 0 … 40. */
  readonly sampleTemperatureC: number;
  /** Standard uncertainty of each weighing [g], 0 … 10. */
  readonly weighingUncertaintyG: number;
}

/** Density of air at 20 °C, 101 kPa and half-saturated [kg/m³]; from memory. */
const airDensityKgPerM3 = 1.2;

/**
 * Density of a sample from a pycnometer filled with water, then with the sample.
 *
 * `ρ = (m_s − m_0)/V + ρ_air`, `V = (m_w − m_0)/(ρ_water(t_w) − ρ_air) · (1 + β (t_s − t_w))`: air buoyancy
 * on the contents, and the expansion of the glass between both fillings.
 *
 * @param weighings emptyG, withWaterG, withSampleG [g], each filling 0.1 … 10 000 g heavier than empty;
 * temperatures [°C], 0 … 40; weighingUncertaintyG [g], 0 … 10
 * @returns density of the sample at its temperature and its standard uncertainty [kg/m³]
 * @throws OutOfRangeError outside these ranges
 * @see Principle as in ISO 758; water from OIML R 22; β = 25·10⁻⁶ 1/K and the density of air from memory.
 * @example
 * const bottle = { emptyG: 30, withWaterG: 79.85, waterTemperatureC: 20, sampleTemperatureC: 20 };
 * densityFromPycnometer({ ...bottle, withSampleG: 79.85, weighingUncertaintyG: 0 }).densityKgPerM3 // ≈ 998.201 ± 0.001
 */
export function densityFromPycnometer(weighings: PycnometerWeighings): {
  readonly densityKgPerM3: number;
  readonly densityUncertaintyKgPerM3: number;
} {
  const { emptyG, withWaterG, withSampleG, waterTemperatureC, sampleTemperatureC } = weighings;
  requireInRange('mass of the empty pycnometer', emptyG, Number.MIN_VALUE, 10_000, 'g');
  requireInRange('mass of the water', withWaterG - emptyG, 0.1, 10_000, 'g');
  requireInRange('mass of the sample', withSampleG - emptyG, 0.1, 10_000, 'g');
  requireInRange('temperature of the water', waterTemperatureC, 0, 40, '°C');
  requireInRange('temperature of the sample', sampleTemperatureC, 0, 40, '°C');
  requireInRange('weighing uncertainty', weighings.weighingUncertaintyG, 0, 10, 'g');
  const water = densityKgPerM3({ ethanolMassFraction: 0, temperatureC: waterTemperatureC });
  const expanded = 1 + sodaLimeGlassExpansionPerK * (sampleTemperatureC - waterTemperatureC);
  const waterG = withWaterG - emptyG;
  const ratio = (withSampleG - emptyG) / waterG;
  const perRatio = (water - airDensityKgPerM3) / expanded;
  // Sensitivities of the ratio to the sample, water and empty weighings: 1, −ratio and ratio − 1, over m_w.
  const spread = Math.hypot(1, ratio, ratio - 1) / waterG;
  return {
    densityKgPerM3: ratio * perRatio + airDensityKgPerM3,
    densityUncertaintyKgPerM3: perRatio * spread * weighings.weighingUncertaintyG,
  };
}
