import { requireInRange } from '../result/index.ts';
import {
  crossCoefficients,
  massFractionCoefficients,
  temperatureCoefficients,
} from './density-coefficients.ts';

/** c0 + c1 z + c2 z² + …, by Horner's rule. */
function polynomial(coefficients: readonly number[], z: number): number {
  let sum = 0;
  for (let index = coefficients.length - 1; index >= 0; index--) {
    sum = sum * z + (coefficients[index] ?? 0);
  }
  return sum;
}

/**
 * Density of an ethanol–water mixture,
 * `ρ(w,t) = A1 + Σ A_k w^(k−1) + Σ B_k (t−20)^k + Σ Σ C_ik w^k (t−20)^i`.
 *
 * @param mixture ethanol mass fraction [kg/kg], 0 … 1; temperature [°C], −20 … 40
 * @returns density [kg/m³]
 * @throws OutOfRangeError outside these ranges (liquids that freeze above the temperature included:
 * the formula does not know the freezing curve)
 * @see OIML R 22 (1975), general formula.
 * @example
 * densityKgPerM3({ ethanolMassFraction: 0.4, temperatureC: 20 }) // ≈ 935.145 ± 0.001
 * densityKgPerM3({ ethanolMassFraction: 1, temperatureC: 20 }) // ≈ 789.239 ± 0.001
 */
export function densityKgPerM3(mixture: {
  readonly ethanolMassFraction: number;
  readonly temperatureC: number;
}): number {
  const { ethanolMassFraction, temperatureC } = mixture;
  requireInRange('ethanol mass fraction', ethanolMassFraction, 0, 1, 'kg/kg');
  requireInRange('temperature', temperatureC, -20, 40, '°C');
  const excessK = temperatureC - 20;
  const cross = crossCoefficients.map(
    (row) => ethanolMassFraction * polynomial(row, ethanolMassFraction),
  );
  return (
    polynomial(massFractionCoefficients, ethanolMassFraction) +
    excessK * polynomial(temperatureCoefficients, excessK) +
    excessK * polynomial(cross, excessK)
  );
}
