import { requireInRange } from '../../result/index.ts';
import { type BoilingPoint, lookUpBoiling } from '../vapour-lookup.ts';
import { tabulateVapour } from '../vapour-table.ts';

/** Ethanol mole fraction of the vapour over a boiling liquid of the given one; rises from 0 to 1. */
export type EquilibriumCurve = (ethanolMoleFraction: number) => number;

/**
 * The equilibrium curve of the NRTL model of this project at one pressure, as a fine table: `y = αx/(1 + (α − 1)x)`
 * with the relative volatility α interpolated.
 *
 * @param pressureKPa [kPa], 50 … 110
 * @returns y*(x), within 2e-5 of `bubblePoint`
 * @throws OutOfRangeError outside this range
 *
 * Source: see `bubblePoint`.
 * @example
 * equilibriumCurve(101.325)(0.2608) // ≈ 0.558 ± 0.01
 */
export function equilibriumCurve(pressureKPa: number): EquilibriumCurve {
  requireInRange('pressure', pressureKPa, 50, 110, 'kPa');
  const table = tabulateVapour(pressureKPa);
  const boiling: BoilingPoint = { temperatureC: 0, temperaturePerX: 0, y: 0, yPerX: 0 };
  return (ethanolMoleFraction) => {
    requireInRange('ethanol mole fraction', ethanolMoleFraction, 0, 1, 'mol/mol');
    lookUpBoiling(table, ethanolMoleFraction, boiling);
    return boiling.y;
  };
}
