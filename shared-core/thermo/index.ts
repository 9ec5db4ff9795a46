/** Amounts, volumes and heats of the pure liquids and their mixture. */
export { enthalpyOfVaporizationJPerMol } from './enthalpy-of-vaporization.ts';
export { gasConstantJPerMolK } from './gas-constant.ts';
export { mixtureAmounts } from './mixture-amounts.ts';
export { molarVolumeMlPerMol } from './molar-volume.ts';
export { vaporizationHeatJPerMl } from './vaporization-heat.ts';
