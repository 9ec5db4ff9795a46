import { alcoholByVolume, massFractionFromMoleFraction } from '../alcoholometry/index.ts';

/** Strength of a mixture from its ethanol mole fraction [% vol at 20 °C]; the fraction is cut to 0 … 1. */
export function strengthOfMoleFraction(ethanolMoleFraction: number): number {
  const bounded = Math.min(1, Math.max(0, ethanolMoleFraction));
  return alcoholByVolume({ ethanolMassFraction: massFractionFromMoleFraction(bounded) });
}
