import { requireInRange } from '../result/index.ts';
import { massFractionFromAlcoholByVolume } from './alcohol-by-volume.ts';
import { densityKgPerM3 } from './density.ts';
import { sodaLimeGlassExpansionPerK } from './glass-expansion.ts';
import { type Strength, strengthFromDensity } from './strength-from-density.ts';

/**
 * True density from a hydrometer graduated at 20 °C and read at another temperature. The float's glass
 * has expanded, so it displaces more: `ρ(t) = R/(1 + β (t − 20))`, β = 25·10⁻⁶ 1/K.
 *
 * @param reading indicatedDensityKgPerM3 [kg/m³], 700 … 1200; temperature of the liquid [°C], 0 … 40
 * @returns density of the liquid at its temperature [kg/m³]
 * @throws OutOfRangeError outside these ranges
 * @see Principle as in ISO 387 and OIML R 44; β for soda-lime glass from memory.
 * @example
 * densityFromHydrometer({ indicatedDensityKgPerM3: 950, temperatureC: 20 }) // => 950
 * densityFromHydrometer({ indicatedDensityKgPerM3: 950, temperatureC: 30 }) // ≈ 949.763 ± 0.001
 */
export function densityFromHydrometer(reading: {
  readonly indicatedDensityKgPerM3: number;
  readonly temperatureC: number;
}): number {
  const { indicatedDensityKgPerM3, temperatureC } = reading;
  requireInRange('hydrometer reading', indicatedDensityKgPerM3, 700, 1200, 'kg/m³');
  requireInRange('temperature', temperatureC, 0, 40, '°C');
  return indicatedDensityKgPerM3 / (1 + sodaLimeGlassExpansionPerK * (temperatureC - 20));
}

/** An alcoholometer (hydrometer graduated in % vol at 20 °C) as read, with standard uncertainties. */
export interface AlcoholometerReading {
  /** Scale reading [% vol], 0 … 100. */
  readonly indicatedAbv: number;
  /** Temperature of the liquid [°C], 0 … 40. */
  readonly temperatureC: number;
  /** Standard uncertainty of the scale reading [% vol], 0 … 10. */
  readonly readingUncertaintyAbv: number;
  /** Standard uncertainty of the temperature [K], 0 … 10. */
  readonly temperatureUncertaintyK: number;
}

/**
 * Strength at 20 °C from an alcoholometer read at any temperature.
 *
 * The mark read stands for the density `ρ(w, 20)` of R 22; divided by `1 + β (t − 20)` for the expansion
 * of the float it is the density of the liquid at t, which gives w through `ρ(w, t)`.
 *
 * @param reading indicated strength [% vol], 0 … 100; temperature [°C], 0 … 40; standard uncertainties
 * readingUncertaintyAbv [% vol] and temperatureUncertaintyK [K], both 0 … 10
 * @returns mass fraction [kg/kg] and strength [% vol at 20 °C] with 95 % intervals
 * @throws OutOfRangeError outside these ranges, and where the liquid would be beyond water or ethanol
 * @see OIML R 22 (1975), general formula; β = 25·10⁻⁶ 1/K for soda-lime glass from memory.
 * @example
 * const sure = { readingUncertaintyAbv: 0, temperatureUncertaintyK: 0 };
 * strengthFromAlcoholometer({ indicatedAbv: 40, temperatureC: 20, ...sure }).alcoholByVolume.value // ≈ 40 ± 1e-9
 * strengthFromAlcoholometer({ indicatedAbv: 40, temperatureC: 25, ...sure }).alcoholByVolume.value // ≈ 38.0 ± 0.15
 */
export function strengthFromAlcoholometer(reading: AlcoholometerReading): Strength {
  const { indicatedAbv, temperatureC, readingUncertaintyAbv, temperatureUncertaintyK } = reading;
  requireInRange('alcoholometer reading', indicatedAbv, 0, 100, '% vol');
  requireInRange('reading uncertainty', readingUncertaintyAbv, 0, 10, '% vol');
  const densityAtMark = (abv: number) =>
    densityKgPerM3({
      ethanolMassFraction: massFractionFromAlcoholByVolume({
        alcoholByVolume: Math.min(Math.max(abv, 0), 100),
      }),
      temperatureC: 20,
    });
  // Half a mark either side: the scale is strongly curved in density.
  const densityPerAbv = Math.abs(
    densityAtMark(indicatedAbv + 0.5) - densityAtMark(indicatedAbv - 0.5),
  );
  return strengthFromDensity({
    densityKgPerM3: densityFromHydrometer({
      indicatedDensityKgPerM3: densityAtMark(indicatedAbv),
      temperatureC,
    }),
    temperatureC,
    densityUncertaintyKgPerM3: readingUncertaintyAbv * densityPerAbv,
    temperatureUncertaintyK,
  });
}
