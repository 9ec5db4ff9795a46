import { requireInRange } from '../../result/index.ts';
import { type BatchSpan, type BatchYield, batchYield } from './simple-batch.ts';
import { distillateAboveStages } from './step-plates.ts';

/**
 * Batch rectification at constant reflux: the distillate weakens as the pot does.
 * `ln(F/W) = ∫ dx/(x_D(x) − x)`, with `x_D` from McCabe–Thiele steps at each pot composition; no hold-up.
 *
 * @param batch equilibrium curve, charge [mol] > 0, pot compositions 0 < end < beginning [mol/mol],
 * `refluxRatio` 0 … 1e6 [mol/mol], `stages` equilibrium stages with the pot, 1 … 100
 * @returns residue and distillate [mol], mean composition [mol/mol]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: Smoker & Rose, Trans. AIChE 36 (1940) 285 (from memory); Perry's Handbook, section 13, Batch Distillation.
 * @example
 * const batch = { equilibrium: equilibriumCurve(101.3), chargeMol: 100, potMoleFraction: 0.18, endPotMoleFraction: 0.06 };
 * constantRefluxBatch({ ...batch, refluxRatio: 0, stages: 1 }).residueMol // ≈ 70 ± 1.4
 */
export function constantRefluxBatch(
  batch: BatchSpan & { readonly refluxRatio: number; readonly stages: number },
): BatchYield {
  const { equilibrium, refluxRatio, stages } = batch;
  requireInRange('reflux ratio', refluxRatio, 0, 1e6, 'mol/mol');
  requireInRange('stages', stages, 1, 100, '');
  return batchYield(
    batch,
    (potMoleFraction) => distillateAboveStages(equilibrium, potMoleFraction, refluxRatio, stages),
    100,
  );
}
