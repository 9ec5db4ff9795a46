import {
  azeotrope,
  dewPoint,
  massFractionFromAlcoholByVolume,
  moleFractionFromMassFraction,
} from '#shared-core';

export interface ExpectedPlateau {
  readonly azeotropeC: number;
  readonly limitC: number;
}

/** Where the head will hold: from the azeotrope to the dew temperature of the least strength. */
export function expectedPlateau(pressureKPa: number, leastStrengthAbv: number): ExpectedPlateau {
  const lowest = azeotrope(pressureKPa);
  const massFraction = massFractionFromAlcoholByVolume({ alcoholByVolume: leastStrengthAbv });
  const ethanolMoleFraction = Math.min(
    moleFractionFromMassFraction(massFraction),
    lowest.ethanolMoleFraction,
  );
  return {
    azeotropeC: lowest.temperatureC,
    limitC: dewPoint({ ethanolMoleFraction, pressureKPa }).temperatureC,
  };
}
