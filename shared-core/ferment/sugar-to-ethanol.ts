import {
  alcoholByVolume,
  densityKgPerM3,
  ethanolMolarMassGPerMol,
  massFractionFromAlcoholByVolume,
} from '../alcoholometry/index.ts';
import {
  gayLussacGPerG,
  hexoseFromSucroseGPerG,
  hexoseMolarMassGPerMol,
  pasteurEthanolGPerG,
} from '../bookkeeping/index.ts';
import { requireInRange } from '../result/index.ts';

/** Molar mass of carbon dioxide [g/mol], from IUPAC atomic weights 2021. */
export const carbonDioxideMolarMassGPerMol = 44.0095;

/** CO2 that leaves with each gram of ethanol, `C6H12O6 = 2 C2H5OH + 2 CO2` [g/g]: 0.955. */
export const carbonDioxidePerEthanolGPerG = carbonDioxideMolarMassGPerMol / ethanolMolarMassGPerMol;

/** Ethanol that a litre holds for each % vol [g]: the density of ethanol at 20 °C over a hundred. */
export const ethanolPerAbvGPerL =
  densityKgPerM3({ ethanolMassFraction: 1, temperatureC: 20 }) / 100;

/**
 * Sugar that the law counts for 1 % vol in a litre of finished liquid [g]: now, and as it was long taken.
 * Source: French order of 14 September 2011, annex IV (16.83 g/L, as the EU and the OIV count); former convention 17.5.
 */
export const lawfulSugarPerAbvGPerL = { now: 16.83, former: 17.5 } as const;

/** Sugars with a formula of their own: grape and fruit sugar, or table sugar. */
export type PureSugar = 'hexose' | 'sucrose';

/** What an amount of sugar gives. */
export interface SugarGives {
  /** By the equation alone: no ferment gives more [g]. */
  readonly atMostEthanolG: number;
  /** As ferments in practice do [g]. */
  readonly inPracticeEthanolG: number;
  /** Gas by the equation [g]. */
  readonly carbonDioxideG: number;
  /** That gas at 25 °C and 101.325 kPa, ideal [L]. */
  readonly carbonDioxideL: number;
}

/** Molar gas constant (exact since 2019), times 298.15 K, over 101.325 kPa [L/mol]. */
const molarVolumeL = (8.314462618 * 298.15) / 101.325;

/**
 * Ethanol and gas from sugar: `C6H12O6 = 2 C2H5OH + 2 CO2`, sucrose taking up water first; in practice 48.4 g of
 * ethanol from 100 g of hexose.
 *
 * @param sugarG fermentable sugar, dry [g], 0 … 1e6
 * @param kind hexose (glucose, fructose) or sucrose (table sugar)
 * @returns ethanol at most and in practice [g], gas [g] and [L]
 * @throws OutOfRangeError outside this range
 *
 * Source: IUPAC atomic weights 2021; practice: L. Pasteur, Annales de chimie et de physique, 3rd series, 58 (1860) 323,
 * as given by the University of Applied Sciences Weihenstephan.
 * @example
 * fromSugar(1, 'hexose').atMostEthanolG // ≈ 0.51143 ± 1e-4
 * fromSugar(1, 'sucrose').carbonDioxideG // ≈ 0.51428 ± 1e-4
 * fromSugar(1000, 'hexose').carbonDioxideL // ≈ 271.6 ± 0.5
 */
export function fromSugar(sugarG: number, kind: PureSugar): SugarGives {
  requireInRange('sugar', sugarG, 0, 1e6, 'g');
  const hexoseG = kind === 'hexose' ? sugarG : sugarG * hexoseFromSucroseGPerG;
  const carbonDioxideMol = (2 * hexoseG) / hexoseMolarMassGPerMol;
  return {
    atMostEthanolG: gayLussacGPerG * hexoseG,
    inPracticeEthanolG: pasteurEthanolGPerG * hexoseG,
    carbonDioxideG: carbonDioxideMol * carbonDioxideMolarMassGPerMol,
    carbonDioxideL: carbonDioxideMol * molarVolumeL,
  };
}

/**
 * Strength of a finished liquid that holds so much ethanol, `q = m/(V ρ(1, 20)/100)`.
 *
 * @param ethanolG ethanol [g] ≥ 0
 * @param volumeL finished liquid at 20 °C [L] > 0
 * @returns strength [% vol], not more than 100
 * @throws OutOfRangeError outside these ranges
 *
 * Source: definition of strength by volume, OIML R 22 (1975).
 * @example
 * strengthOf(fromSugar(168.3, 'hexose').atMostEthanolG, 1) // ≈ 10.91 ± 0.01
 * strengthOf(fromSugar(168.3, 'hexose').inPracticeEthanolG, 1) // ≈ 10.32 ± 0.01
 */
export function strengthOf(ethanolG: number, volumeL: number): number {
  requireInRange('ethanol', ethanolG, 0, 1e7, 'g');
  requireInRange('volume', volumeL, 1e-3, 1e6, 'L');
  return Math.min(100, ethanolG / volumeL / ethanolPerAbvGPerL);
}

/**
 * Relative density 20/20 of ethanol in water, `ρ(w, 20)/ρ(0, 20)`: what a ferment without any extract would read.
 *
 * @param abv strength [% vol], 0 … 100
 * @returns gravity 20/20
 * @throws OutOfRangeError outside this range
 *
 * Source: OIML R 22 (1975), general formula.
 * @example
 * dryGravity(10) // ≈ 0.98648 ± 2e-5
 */
export function dryGravity(abv: number): number {
  const ethanolMassFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: abv });
  return dryGravityOfMass(ethanolMassFraction);
}

/** The same from the mass fraction [kg/kg]. */
export function dryGravityOfMass(ethanolMassFraction: number): number {
  return (
    densityKgPerM3({ ethanolMassFraction, temperatureC: 20 }) /
    densityKgPerM3({ ethanolMassFraction: 0, temperatureC: 20 })
  );
}

/** Strength from the mass of ethanol in a mass of liquid whose gravity an extract has raised [% vol]. */
export function strengthAtGravity(ethanolMassFraction: number, gravity: number): number {
  const dry = dryGravityOfMass(ethanolMassFraction);
  return (alcoholByVolume({ ethanolMassFraction }) * gravity) / dry;
}
