import { strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { type BatchYield, equilibriumCurve, simpleBatch } from '../column/index.ts';
import { azeotrope } from '../equilibrium/index.ts';
import { requireInRange } from '../result/index.ts';

/** What a still without a column would have given from the same charge. */
export interface SimpleDistillation {
  /** Mean strength of the same amount of distillate [% vol at 20 °C]. */
  readonly strengthAbv: number;
  readonly distillateMoleFraction: number;
  readonly recoveryPercent: number;
  readonly residueMoleFraction: number;
}

/**
 * The simple distillation to set beside a fractional one: the same charge, as many moles of distillate, no column.
 * Rayleigh's equation `ln(F/W) = ∫ dx/(y*(x) − x)`, solved for the pot composition at which that much is over.
 *
 * @param batch chargeMol [mol] > 0; potMoleFraction [mol/mol], 0 < x < azeotrope; distillateMol [mol], 0 < D < charge;
 * pressureKPa [kPa], 50 … 110
 * @returns strength [% vol at 20 °C], recovery of ethanol [%]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: Lord Rayleigh, Phil. Mag. 4 (1902) 521; example: Perry's Handbook, section 13, 100 mol of 18 % to 30 mol distillate.
 * @example
 * simpleDistillation({ chargeMol: 100, potMoleFraction: 0.18, distillateMol: 30, pressureKPa: 101.325 }).distillateMoleFraction // ≈ 0.46 ± 0.01
 */
export function simpleDistillation(batch: {
  readonly chargeMol: number;
  readonly potMoleFraction: number;
  readonly distillateMol: number;
  readonly pressureKPa: number;
}): SimpleDistillation {
  const { chargeMol, potMoleFraction, distillateMol, pressureKPa } = batch;
  const top = azeotrope(pressureKPa).ethanolMoleFraction;
  requireInRange('ethanol in the charge', potMoleFraction, 1e-4, top - 0.01, 'mol/mol');
  requireInRange('distillate', distillateMol, 1e-9 * chargeMol, 0.999 * chargeMol, 'mol');
  const equilibrium = equilibriumCurve(pressureKPa);
  const upTo = (endPotMoleFraction: number): BatchYield =>
    simpleBatch({ equilibrium, chargeMol, potMoleFraction, endPotMoleFraction });
  let low = Math.log(2e-6);
  let high = Math.log(potMoleFraction);
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (upTo(Math.exp(middle)).distillateMol > distillateMol) low = middle;
    else high = middle;
  }
  const residueMoleFraction = Math.exp((low + high) / 2);
  const residueMol = chargeMol - distillateMol;
  const ethanolMol = chargeMol * potMoleFraction - residueMol * residueMoleFraction;
  const distillateMoleFraction = ethanolMol / distillateMol;
  return {
    strengthAbv: strengthFromMoleFraction(distillateMoleFraction),
    distillateMoleFraction,
    recoveryPercent: (100 * ethanolMol) / (chargeMol * potMoleFraction),
    residueMoleFraction,
  };
}
