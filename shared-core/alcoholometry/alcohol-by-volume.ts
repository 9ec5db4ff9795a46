import { requireInRange } from '../result/index.ts';
import { densityKgPerM3 } from './density.ts';
import { findRoot } from './find-root.ts';

const ethanolDensityAt20C = densityKgPerM3({ ethanolMassFraction: 1, temperatureC: 20 });

/**
 * Alcoholic strength by volume at 20 °C: the volume of pure ethanol in 100 volumes of the mixture,
 * both at 20 °C, `q = 100 w ρ(w, 20)/ρ(1, 20)`.
 *
 * @param mixture ethanol mass fraction [kg/kg], 0 … 1
 * @returns strength [% vol], 0 … 100
 * @throws OutOfRangeError outside this range
 * @see OIML R 22 (1975), sections 2 and 3, with the density formula of the same document.
 * @example
 * alcoholByVolume({ ethanolMassFraction: 0.4 }) // ≈ 47.3948 ± 0.0001
 * alcoholByVolume({ ethanolMassFraction: 1 }) // => 100
 */
export function alcoholByVolume(mixture: { readonly ethanolMassFraction: number }): number {
  const { ethanolMassFraction } = mixture;
  const density = densityKgPerM3({ ethanolMassFraction, temperatureC: 20 });
  return 100 * ethanolMassFraction * (density / ethanolDensityAt20C);
}

/**
 * Ethanol mass fraction from the alcoholic strength by volume at 20 °C: the inverse of
 * `q = 100 w ρ(w, 20)/ρ(1, 20)`, by a bracketed secant.
 *
 * @param mixture strength [% vol at 20 °C], 0 … 100
 * @returns ethanol mass fraction [kg/kg], within 1e-12 of the exact inverse
 * @throws OutOfRangeError outside this range
 * @see OIML R 22 (1975), density formula.
 * @example
 * massFractionFromAlcoholByVolume({ alcoholByVolume: 40 }) // ≈ 0.332996 ± 1e-6
 * massFractionFromAlcoholByVolume({ alcoholByVolume: 96 }) // ≈ 0.938384 ± 1e-6
 */
export function massFractionFromAlcoholByVolume(mixture: {
  readonly alcoholByVolume: number;
}): number {
  const target = mixture.alcoholByVolume;
  requireInRange('strength', target, 0, 100, '% vol');
  return findRoot((ethanolMassFraction) => alcoholByVolume({ ethanolMassFraction }) - target, 0, 1);
}
