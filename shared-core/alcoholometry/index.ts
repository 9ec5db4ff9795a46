export { alcoholByVolume, massFractionFromAlcoholByVolume } from './alcohol-by-volume.ts';
export { massFractionFromMoleFraction, moleFractionFromMassFraction } from './amount-fractions.ts';
export { densityKgPerM3 } from './density.ts';
