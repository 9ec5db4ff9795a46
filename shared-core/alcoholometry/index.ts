/** Strength, density and mole fraction of ethanol and water, after OIML R 22. */
export { alcoholByVolume, massFractionFromAlcoholByVolume } from './alcohol-by-volume.ts';
export {
  ethanolMolarMassGPerMol,
  massFractionFromMoleFraction,
  moleFractionFromMassFraction,
  waterMolarMassGPerMol,
} from './amount-fractions.ts';
export { densityKgPerM3 } from './density.ts';
export { sodaLimeGlassExpansionPerK } from './glass-expansion.ts';
export { densityFromHydrometer, strengthFromAlcoholometer } from './hydrometer.ts';
export { densityFromPycnometer, type PycnometerWeighings } from './pycnometer.ts';
export {
  moleFractionFromStrength,
  strengthFromMoleFraction,
} from './strength-and-mole-fraction.ts';
export { type Strength, strengthFromDensity } from './strength-from-density.ts';
