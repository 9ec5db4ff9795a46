export { enthalpyOfVaporizationJPerMol } from './enthalpy-of-vaporization.ts';
export { liquidHeatCapacityJPerMolK } from './liquid-heat-capacity.ts';
export { type MixtureAmounts, mixtureAmounts } from './mixture-amounts.ts';
export { molarVolumeMlPerMol } from './molar-volume.ts';
