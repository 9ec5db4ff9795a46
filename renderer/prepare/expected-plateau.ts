import { azeotrope, dewPoint, moleFractionFromStrength } from '#shared-core';

export interface ExpectedPlateau {
  readonly azeotropeC: number;
  readonly limitC: number;
}

/** Where the head will hold: from the azeotrope to the dew temperature of the least strength. */
export function expectedPlateau(pressureKPa: number, leastStrengthAbv: number): ExpectedPlateau {
  const lowest = azeotrope(pressureKPa);
  const ethanolMoleFraction = Math.min(
    moleFractionFromStrength(leastStrengthAbv),
    lowest.ethanolMoleFraction,
  );
  return {
    azeotropeC: lowest.temperatureC,
    limitC: dewPoint({ ethanolMoleFraction, pressureKPa }).temperatureC,
  };
}
