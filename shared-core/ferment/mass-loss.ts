import { ethanolMolarMassGPerMol, waterMolarMassGPerMol } from '../alcoholometry/index.ts';
import { saturationPressureKPa } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';
import {
  carbonDioxideMolarMassGPerMol,
  carbonDioxidePerEthanolGPerG,
  ethanolPerAbvGPerL,
} from './sugar-to-ethanol.ts';

const standardPressureKPa = 101.325;

/** CO2 that leaves a litre of finished liquid for each % vol [g]: 7.54. */
export const carbonDioxidePerAbvGPerL = ethanolPerAbvGPerL * carbonDioxidePerEthanolGPerG;

/**
 * CO2 that a liquid under an air lock keeps dissolved until it is shaken out, by Henry's law
 * `c = M k p`, k = 0.0384 mol/(L atm) at 20 °C, `ln k` falling by 2400 K (1/T − 1/293.15 K).
 *
 * @param temperatureC temperature of the liquid [°C], 0 … 40
 * @returns dissolved gas [g/L] at 101.325 kPa; ferments that were never stirred hold up to half as much again
 * @throws OutOfRangeError outside this range
 *
 * Source: Henry's constant of carbon dioxide in water, from memory.
 * @example
 * dissolvedGasGPerL(20) // ≈ 1.69 ± 0.01
 */
export function dissolvedGasGPerL(temperatureC: number): number {
  requireInRange('temperature', temperatureC, 0, 40, '°C');
  const henry = 0.0384 * Math.exp(2400 * (1 / (temperatureC + 273.15) - 1 / 293.15));
  return carbonDioxideMolarMassGPerMol * henry;
}

/**
 * Water vapour that each gram of gas takes along, saturated: `w = M_w p_w/(M_g (P − p_w))`.
 *
 * @param temperatureC temperature of the liquid [°C], 1 … 40
 * @returns water [g per g of CO2] at 101.325 kPa
 * @throws OutOfRangeError outside this range
 *
 * Source: ideal gas over water, vapour pressure as in `saturationPressureKPa`.
 * @example
 * waterCarriedGPerG(20) // ≈ 0.0097 ± 0.0001
 * waterCarriedGPerG(30) // ≈ 0.0179 ± 0.0001
 */
export function waterCarriedGPerG(temperatureC: number): number {
  requireInRange('temperature', temperatureC, 1, 40, '°C');
  const vapourKPa = saturationPressureKPa('water', temperatureC);
  return (
    (waterMolarMassGPerMol / carbonDioxideMolarMassGPerMol) *
    (vapourKPa / (standardPressureKPa - vapourKPa))
  );
}

/** Activity coefficient of a little ethanol in water at room temperature, from memory; some 5 near 10 % vol. */
const diluteEthanolActivity = 5;

/**
 * Ethanol that each gram of gas takes along, saturated: `M γ x p/(M_g P)`, γ = 5.
 *
 * @param abv strength of the liquid [% vol], 0 … 20
 * @param temperatureC temperature of the liquid [°C], 1 … 40
 * @returns ethanol [g per g of CO2], within a quarter
 * @throws OutOfRangeError outside these ranges
 *
 * Source: ideal gas over a dilute solution, γ from memory.
 * @example
 * ethanolCarriedGPerG(10, 25) // ≈ 0.014 ± 0.002
 */
export function ethanolCarriedGPerG(abv: number, temperatureC: number): number {
  requireInRange('strength', abv, 0, 20, '% vol');
  requireInRange('temperature', temperatureC, 1, 40, '°C');
  const ethanolMol = (abv * ethanolPerAbvGPerL) / ethanolMolarMassGPerMol;
  const waterMol = ((100 - abv) * 9.982) / waterMolarMassGPerMol;
  const fraction = ethanolMol / (ethanolMol + waterMol);
  const vapourKPa =
    diluteEthanolActivity * fraction * saturationPressureKPa('ethanol', temperatureC);
  return (
    (ethanolMolarMassGPerMol / carbonDioxideMolarMassGPerMol) * (vapourKPa / standardPressureKPa)
  );
}

/** A ferment on a balance. */
export interface MassLoss {
  /** What it has lost since the yeast went in [g] ≥ 0. */
  readonly lostG: number;
  /** Finished liquid [L] > 0. */
  readonly volumeL: number;
  /** Mean temperature of the liquid [°C], 1 … 40. */
  readonly temperatureC: number;
  /** Whether the gas was shaken or stirred out before the last weighing. */
  readonly isDegassed: boolean;
}

/**
 * Strength from the mass that a ferment has lost, `q = (m/(1 + w + e) + d V)/(7.54 g/L V)` with the vapours carried off
 * w and e and the gas d that is still dissolved (nothing once degassed, no more than was made).
 *
 * @returns strength [% vol], 0 … 25; a gram of a balance on a litre is 0.13 % vol
 * @throws OutOfRangeError where there is no volume, or the loss is more than 25 % vol would give
 *
 * Source: see {@link fromSugar}, {@link dissolvedGasGPerL}, {@link waterCarriedGPerG}.
 * @example
 * strengthFromMassLoss({ lostG: 76.5, volumeL: 1, temperatureC: 20, isDegassed: true }) // ≈ 9.97 ± 0.1
 * strengthFromMassLoss({ lostG: 0, volumeL: 1, temperatureC: 20, isDegassed: false }) // => 0
 */
export function strengthFromMassLoss(loss: MassLoss): number {
  const { lostG, volumeL, temperatureC, isDegassed } = loss;
  requireInRange('volume', volumeL, 1e-3, 1e6, 'L');
  requireInRange('mass lost per litre', lostG / volumeL, 0, 25 * carbonDioxidePerAbvGPerL, 'g/L');
  if (lostG === 0) return 0;
  const raw = lostG / volumeL / carbonDioxidePerAbvGPerL;
  // Ethanol is carried off in proportion to what there was: half of the end on the average.
  const carried =
    waterCarriedGPerG(temperatureC) + ethanolCarriedGPerG(Math.min(20, raw / 2), temperatureC);
  const dissolved = isDegassed ? 0 : dissolvedGasGPerL(temperatureC);
  return (lostG / volumeL / (1 + carried) + dissolved) / carbonDioxidePerAbvGPerL;
}
