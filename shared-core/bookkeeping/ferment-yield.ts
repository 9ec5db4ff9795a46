import { ethanolMolarMassGPerMol, waterMolarMassGPerMol } from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';
import { type DerivedQuantity, propagateUncertainty } from './propagate-uncertainty.ts';
import type { Quantity } from './quantity.ts';

/** Molar mass of a hexose, C6H12O6 [g/mol], from IUPAC atomic weights. */
export const hexoseMolarMassGPerMol = 180.156;

/** Hexose from sucrose, `C12H22O11 + H2O = 2 C6H12O6` [g/g]: 1.0526. */
export const hexoseFromSucroseGPerG =
  (2 * hexoseMolarMassGPerMol) / (2 * hexoseMolarMassGPerMol - waterMolarMassGPerMol);

/** Ethanol from hexose, `C6H12O6 = 2 C2H5OH + 2 CO2` [g/g]: 0.5114. */
export const gayLussacGPerG = (2 * ethanolMolarMassGPerMol) / hexoseMolarMassGPerMol;

/**
 * Ethanol that yeast gives from hexose in practice [g/g]: 94.6 % of what the equation allows. Source: L. Pasteur, Mémoire
 * sur la fermentation alcoolique, Annales de chimie et de physique, 3rd series, 58 (1860) 323 (from memory).
 */
export const pasteurEthanolGPerG = 0.484;

/** From sugar to product, step by step. */
export interface FermentYield {
  /** Ethanol that the sugar could give at most [g]. */
  readonly theoreticalG: Quantity;
  /** Fermentation: ethanol in the ferment, of the theoretical [%]. */
  readonly fermentationPercent: DerivedQuantity;
  /** Distillation: ethanol in the product, of that in the ferment [%]. */
  readonly distillationPercent: DerivedQuantity;
  /** Both together [%]. */
  readonly overallPercent: DerivedQuantity;
}

/**
 * Yield from ferment to product: `m_max = 0.5114 m_sugar`, then the percentages of each step and of both.
 *
 * @param masses sugarG fermentable sugar as hexose [g] > 0; fermentEthanolG in the charge [g] > 0; productEthanolG in the cuts
 * [g], ≥ 0; each with its standard uncertainty
 * @returns ethanol [g] and percentages [%], standard uncertainties by propagation
 * @throws OutOfRangeError outside these ranges
 *
 * Source: Gay-Lussac's equation, C6H12O6 = 2 C2H5OH + 2 CO2; check: Pasteur's balance, see {@link pasteurEthanolGPerG}.
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0 });
 * fermentYield({ sugarG: exact(100), fermentEthanolG: exact(48.4), productEthanolG: exact(40) }).fermentationPercent.value // ≈ 94.6 ± 0.1
 */
export function fermentYield(masses: {
  readonly sugarG: Quantity;
  readonly fermentEthanolG: Quantity;
  readonly productEthanolG: Quantity;
}): FermentYield {
  const { sugarG, fermentEthanolG, productEthanolG } = masses;
  requireInRange('sugar', sugarG.value, 1e-6, 1e9, 'g');
  requireInRange('ethanol in the ferment', fermentEthanolG.value, 1e-6, 1e9, 'g');
  requireInRange('ethanol in the product', productEthanolG.value, 0, 1e9, 'g');
  const named = (name: string, { value, standardUncertainty }: Quantity) => ({
    name,
    reason: 'as booked [g]',
    value,
    standardUncertainty,
  });
  const sugar = named('Sugar', sugarG);
  const ferment = named('Ethanol in the ferment', fermentEthanolG);
  const product = named('Ethanol in the product', productEthanolG);
  const percent = ([part = 0, whole = 1]: readonly number[]) => (100 * part) / whole;
  const ofTheory = (values: readonly number[]) => percent(values) / gayLussacGPerG;
  return {
    theoreticalG: {
      value: gayLussacGPerG * sugarG.value,
      standardUncertainty: gayLussacGPerG * sugarG.standardUncertainty,
    },
    fermentationPercent: propagateUncertainty([ferment, sugar], ofTheory),
    distillationPercent: propagateUncertainty([product, ferment], percent),
    overallPercent: propagateUncertainty([product, sugar], ofTheory),
  };
}
