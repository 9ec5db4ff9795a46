import {
  massFractionFromAlcoholByVolume,
  moleFractionFromMassFraction,
} from '../alcoholometry/index.ts';

/** Ethanol mole fraction of a liquid of this strength [% vol]. */
export function moleFractionOf(strengthAbv: number): number {
  return moleFractionFromMassFraction(
    massFractionFromAlcoholByVolume({ alcoholByVolume: strengthAbv }),
  );
}
