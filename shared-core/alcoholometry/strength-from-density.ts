import { requireInRange } from '../result/index.ts';
import { coverageFactor95, type Estimate, mapEstimate } from '../uncertainty/index.ts';
import { alcoholByVolume } from './alcohol-by-volume.ts';
import { densityKgPerM3 } from './density.ts';
import { massFractionFromDensity } from './mass-fraction-from-density.ts';

/** Strength of a distillate with its 95 % intervals. */
export interface Strength {
  readonly ethanolMassFraction: Estimate;
  /** [% vol at 20 °C] */
  readonly alcoholByVolume: Estimate;
}

/** A density measurement with its standard uncertainties. */
export interface DensityMeasurement {
  /** [kg/m³] */
  readonly densityKgPerM3: number;
  /** Temperature of the liquid [°C], 0 … 40. */
  readonly temperatureC: number;
  /** Standard uncertainty [kg/m³], 0 … 50. */
  readonly densityUncertaintyKgPerM3: number;
  /** Standard uncertainty [K], 0 … 10. */
  readonly temperatureUncertaintyK: number;
}

/**
 * Strength from a density measured at any temperature, with its interval.
 *
 * Inverts `ρ(w, t)` of OIML R 22 at the density and at both ends of `ρ ± 1.96 u`,
 * `u² = u_ρ² + (u_t ∂ρ/∂t)²`; ends beyond pure water or pure ethanol stop there.
 *
 * @param measurement density [kg/m³]; temperature [°C], 0 … 40; standard uncertainties
 * densityUncertaintyKgPerM3 [kg/m³], 0 … 50, and temperatureUncertaintyK [K], 0 … 10
 * @returns mass fraction [kg/kg] and strength [% vol at 20 °C] with 95 % intervals
 * @throws OutOfRangeError outside these ranges, and for densities beyond water or ethanol by more than the
 * uncertainty
 * @see OIML R 22 (1975), general formula; JCGM 100:2008, equation (10).
 * @example
 * const sure = { densityUncertaintyKgPerM3: 0, temperatureUncertaintyK: 0 };
 * strengthFromDensity({ densityKgPerM3: 948.0452, temperatureC: 20, ...sure }).alcoholByVolume.value // ≈ 40 ± 0.001
 */
export function strengthFromDensity(measurement: DensityMeasurement): Strength {
  const { temperatureC, temperatureUncertaintyK, densityUncertaintyKgPerM3 } = measurement;
  requireInRange('temperature', temperatureC, 0, 40, '°C');
  requireInRange('density uncertainty', densityUncertaintyKgPerM3, 0, 50, 'kg/m³');
  requireInRange('temperature uncertainty', temperatureUncertaintyK, 0, 10, 'K');
  const lightest = densityKgPerM3({ ethanolMassFraction: 1, temperatureC });
  const heaviest = densityKgPerM3({ ethanolMassFraction: 0, temperatureC });
  const massFractionAt = (density: number) =>
    massFractionFromDensity({
      densityKgPerM3: Math.min(Math.max(density, lightest), heaviest),
      temperatureC,
    });
  const density = measurement.densityKgPerM3;
  const expansion = densityPerK(massFractionAt(density), temperatureC);
  const reach =
    coverageFactor95 * Math.hypot(densityUncertaintyKgPerM3, temperatureUncertaintyK * expansion);
  requireInRange('density', density, lightest - reach, heaviest + reach, 'kg/m³');
  const ethanolMassFraction = {
    value: massFractionAt(density),
    low: massFractionAt(density + reach),
    high: massFractionAt(density - reach),
  };
  return {
    ethanolMassFraction,
    alcoholByVolume: mapEstimate(ethanolMassFraction, (massFraction) =>
      alcoholByVolume({ ethanolMassFraction: massFraction }),
    ),
  };
}

/** ∂ρ/∂t at constant composition [kg/(m³·K)], by a central difference (one-sided at 40 °C). */
function densityPerK(ethanolMassFraction: number, temperatureC: number): number {
  const high = Math.min(40, temperatureC + 0.01);
  const low = temperatureC - 0.01;
  return (
    (densityKgPerM3({ ethanolMassFraction, temperatureC: high }) -
      densityKgPerM3({ ethanolMassFraction, temperatureC: low })) /
    (high - low)
  );
}
