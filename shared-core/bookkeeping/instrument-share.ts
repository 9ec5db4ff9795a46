import { coverageFactor95 } from '../uncertainty/index.ts';
import { worded } from '../wording/index.ts';
import { measuredStrength, type StrengthMeasurement } from './strength-measurement.ts';

/** What an instrument's own error does to a strength: signed, so that errors of one instrument add up. */
export interface InstrumentShare {
  /** Readings with the same name were taken with the same instrument. */
  readonly name: string;
  /** Change of the mass fraction for one standard uncertainty of the instrument [kg/kg]. */
  readonly massFraction: number;
}

/** The part of a strength's error that it shares with other readings of the same instrument; null for none. */
export function instrumentShare(strength: StrengthMeasurement): InstrumentShare | null {
  if (strength.by === 'head-temperature') {
    // One probe hung there all along, in one air pressure: what is off with it is off for every cut.
    const { low, high } = measuredStrength(strength).ethanolMassFraction;
    return {
      name: worded('Head temperature'),
      massFraction: (high - low) / (2 * coverageFactor95),
    };
  }
  if (!('instrument' in strength)) return null;
  const { instrument } = strength;
  if (instrument === undefined || instrument.standardUncertainty === 0) return null;
  const step = instrument.standardUncertainty;
  const [above, below] = [fractionAt(strength, step), fractionAt(strength, -step)];
  const here = measuredStrength(strength).ethanolMassFraction.value;
  // At the end of the scale, as in a residue without ethanol, only one side exists.
  const change =
    above !== null && below !== null
      ? (above - below) / 2
      : above !== null
        ? above - here
        : here - (below ?? here);
  return { name: instrument.name, massFraction: change };
}

function fractionAt(
  strength: Extract<StrengthMeasurement, { readonly instrument?: unknown }>,
  offset: number,
): number | null {
  try {
    return measuredStrength(shifted(strength, offset)).ethanolMassFraction.value;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function shifted(
  strength: Extract<StrengthMeasurement, { readonly instrument?: unknown }>,
  offset: number,
): StrengthMeasurement {
  switch (strength.by) {
    case 'alcoholometer':
      return { ...strength, indicatedAbv: plus(strength.indicatedAbv, offset) };
    case 'hydrometer':
      return {
        ...strength,
        indicatedDensityKgPerM3: plus(strength.indicatedDensityKgPerM3, offset),
      };
    default:
      return { ...strength, strengthAbv: plus(strength.strengthAbv, offset) };
  }
}

const plus = <Q extends { readonly value: number }>(quantity: Q, offset: number): Q => ({
  ...quantity,
  value: quantity.value + offset,
});
