import { enthalpyOfVaporizationJPerMol } from '../thermo/index.ts';

/**
 * Enthalpies as the simulator counts them: linear in temperature above 80 °C, zero for liquid and glass there.
 * Linear, so that the temperature of a plate follows from its energy without iteration and every joule is kept.
 *
 * The zero lies where the still works, so a wrong heat capacity of ethanol hardly matters on the plates. In
 * the pot it does: dissolved in much water, ethanol shows about 260 J/(mol K) at 25 °C and 200 near the boil
 * (from memory), twice that of the pure liquid: a 10 % mass charge holds 4.3 J/(g K), more than water.
 * The heat of mixing at still temperatures is below 1 % of the heat of vaporization and is left out.
 */
export const heatContent = {
  zeroC: 80,
  liquidEthanolJPerMolK: 225,
  liquidWaterJPerMolK: 75.6,
  /** Ideal gas near 80 °C (from memory). */
  vapourEthanolJPerMolK: 76,
  vapourWaterJPerMolK: 34.4,
  vaporizationEthanolJPerMol: enthalpyOfVaporizationJPerMol('ethanol', 80),
  vaporizationWaterJPerMol: enthalpyOfVaporizationJPerMol('water', 80),
} as const;

/** Heat in the liquid [J] at a temperature [°C]. */
export function liquidHeatJ(ethanolMol: number, waterMol: number, temperatureC: number): number {
  return liquidHeatCapacityJPerK(ethanolMol, waterMol) * (temperatureC - heatContent.zeroC);
}

export function liquidHeatCapacityJPerK(ethanolMol: number, waterMol: number): number {
  return (
    ethanolMol * heatContent.liquidEthanolJPerMolK + waterMol * heatContent.liquidWaterJPerMolK
  );
}

/** Heat in one mole of vapour [J/mol] at a temperature [°C]. */
export function vapourHeatJPerMol(ethanolMoleFraction: number, temperatureC: number): number {
  const above = temperatureC - heatContent.zeroC;
  const ethanol =
    heatContent.vaporizationEthanolJPerMol + heatContent.vapourEthanolJPerMolK * above;
  const water = heatContent.vaporizationWaterJPerMol + heatContent.vapourWaterJPerMolK * above;
  return ethanolMoleFraction * ethanol + (1 - ethanolMoleFraction) * water;
}

/** Heat in one mole of liquid [J/mol] at a temperature [°C]. */
export function liquidHeatJPerMol(ethanolMoleFraction: number, temperatureC: number): number {
  return liquidHeatJ(ethanolMoleFraction, 1 - ethanolMoleFraction, temperatureC);
}
