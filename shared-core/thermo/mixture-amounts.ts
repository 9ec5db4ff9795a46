import {
  densityKgPerM3,
  ethanolMolarMassGPerMol,
  massFractionFromAlcoholByVolume,
  waterMolarMassGPerMol,
} from '../alcoholometry/index.ts';
import { requireInRange } from '../result/index.ts';

/** Amounts of substance in a liquid. */
export interface MixtureAmounts {
  /** Ethanol [mol], ≥ 0. */
  readonly ethanolMol: number;
  /** Water [mol], ≥ 0. */
  readonly waterMol: number;
}

/**
 * Amounts of ethanol and water in a measured volume of known strength,
 * `n1 = w ρ(w, 20) V/M1`, `n2 = (1 − w) ρ(w, 20) V/M2`.
 *
 * @param liquid volume at 20 °C `volumeMl` [mL], 0 … 1e6, and strength `strengthAbv` [% vol], 0 … 100
 * @returns amounts [mol]
 * @throws OutOfRangeError outside these ranges
 *
 * Source: OIML R 22 (1975) density; IUPAC molar masses. Dissolved solids of a ferment are ignored.
 * @example
 * mixtureAmounts({ volumeMl: 100, strengthAbv: 100 }).ethanolMol // ≈ 1.71319 ± 0.0001
 * mixtureAmounts({ volumeMl: 100, strengthAbv: 0 }).waterMol // ≈ 5.54086 ± 0.0001
 */
export function mixtureAmounts(liquid: {
  readonly volumeMl: number;
  readonly strengthAbv: number;
}): MixtureAmounts {
  requireInRange('volume', liquid.volumeMl, 0, 1e6, 'mL');
  const ethanolMassFraction = massFractionFromAlcoholByVolume({
    alcoholByVolume: liquid.strengthAbv,
  });
  const massG =
    (liquid.volumeMl * densityKgPerM3({ ethanolMassFraction, temperatureC: 20 })) / 1000;
  return {
    ethanolMol: (massG * ethanolMassFraction) / ethanolMolarMassGPerMol,
    waterMol: (massG * (1 - ethanolMassFraction)) / waterMolarMassGPerMol,
  };
}
