import { densityKgPerM3, massFractionFromAlcoholByVolume } from '../alcoholometry/index.ts';

/** What came over between two moments [mL]; null where nobody measured it. */
export interface VolumeGain {
  readonly fromS: number;
  readonly toS: number;
  readonly gainedMl: number | null;
}

/** Between when distillate came over, and how strong it was then. */
export interface WhileItCame {
  readonly arrivedS: number;
  readonly untilS: number;
  /** [% vol at 20 °C] */
  readonly strengthAt: (timeS: number) => number;
  /** Mean over what an even heat brings over between two moments [% vol at 20 °C]. */
  readonly meanStrengthAbv: (fromS: number, toS: number) => number;
}

/** Density of a distillate at 20 °C [g/mL]. Source: OIML R 22 (1975). */
export function gramsPerMl(strengthAbv: number): number {
  const ethanolMassFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: strengthAbv });
  return densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }) / 1000;
}
