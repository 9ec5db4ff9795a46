import { densityKgPerM3, moleFractionFromStrength, strengthFromMoleFraction } from '#shared-core';

/**
 * Ethanol and water by another model and other constants than the project's own. Wilson parameters [cal/mol]
 * and molar volumes [mL/mol] of the DECHEMA collection (Gmehling and Onken, volume I, part 1), from memory. Against
 * the measurements of Kamihama 2012 and Carey and Lewis 1932 at 101.3 kPa: boiling points within 0.3 K (rms), vapour within
 * 0.010 (rms), dew points of vapours from 50 to 86 mol % within 0.13 K (rms).
 */
const wilson = { ethanolWater: 325.0757, waterEthanol: 953.2792 };
const molarVolumeMl = { ethanol: 58.68, water: 18.07 };
const gasCalPerMolK = 1.98721;

/** log10(p/mmHg) = A − B/(t + C): Gmehling and Onken; ethanol from memory, water as read in a public table. */
const ethanolAntoine = [8.1122, 1592.864, 226.184] as const;
const waterAntoine = [8.07131, 1730.63, 233.426] as const;
const kPaPerMmHg = 0.133_322_4;

/** Volatility of a light third substance, about acetone: vapour over liquid at infinite dilution, from memory. */
const lightOverEthanol = 2.2;
const lightOverWater = 24;
/** Relative change of the vapour pressure of the mixture per kelvin: 39.5 kJ/mol / (R (351 K)²). */
const relativePressurePerK = 0.0386;

export const ethanolGPerMol = 46.068;
export const waterGPerMol = 18.015;

function saturationKPa([a, b, c]: readonly [number, number, number], temperatureC: number): number {
  return kPaPerMmHg * 10 ** (a - b / (temperatureC + c));
}

/** Activity coefficients after Wilson. */
export function activities(x: number, temperatureC: number): readonly [number, number] {
  const rt = gasCalPerMolK * (temperatureC + 273.15);
  const ratio = molarVolumeMl.water / molarVolumeMl.ethanol;
  const l12 = ratio * Math.exp(-wilson.ethanolWater / rt);
  const l21 = Math.exp(-wilson.waterEthanol / rt) / ratio;
  const first = x + l12 * (1 - x);
  const second = 1 - x + l21 * x;
  const difference = l12 / first - l21 / second;
  return [Math.exp((1 - x) * difference) / first, Math.exp(-x * difference) / second];
}

/** Boiling point of a liquid [°C] and the vapour over it. */
export function boilingPoint(x: number, pressureKPa: number): { temperatureC: number; y: number } {
  let low = 20;
  let high = 120;
  for (let halving = 0; halving < 45; halving += 1) {
    const temperatureC = (low + high) / 2;
    const [ethanol, water] = activities(x, temperatureC);
    const sum =
      x * ethanol * saturationKPa(ethanolAntoine, temperatureC) +
      (1 - x) * water * saturationKPa(waterAntoine, temperatureC);
    if (sum > pressureKPa) high = temperatureC;
    else low = temperatureC;
  }
  const [ethanol] = activities(x, low);
  return { temperatureC: low, y: (x * ethanol * saturationKPa(ethanolAntoine, low)) / pressureKPa };
}

/** The mixture at one pressure, as tables: a run asks for it some ten million times. */
export interface MixtureTables {
  readonly pressureKPa: number;
  /** Of liquids with 0, 1/steps, 2/steps … ethanol: boiling point and vapour. */
  readonly boilsC: Float64Array;
  readonly vapour: Float64Array;
  /** Dew points of vapours with 0, 1/steps … ethanol, up to the azeotrope; constant above it. */
  readonly dewC: Float64Array;
  readonly azeotropeY: number;
  /** Change of any boiling point with pressure, at the azeotrope [K/kPa]. */
  readonly kelvinPerKPa: number;
}

const steps = 800;

export function mixtureTables(pressureKPa: number): MixtureTables {
  const boilsC = new Float64Array(steps + 2);
  const vapour = new Float64Array(steps + 2);
  for (let index = 0; index <= steps; index += 1) {
    const { temperatureC, y } = boilingPoint(index / steps, pressureKPa);
    boilsC[index] = temperatureC;
    vapour[index] = y;
  }
  boilsC[steps + 1] = boilsC[steps] as number;
  vapour[steps + 1] = 1;
  let azeotropeIndex = 1;
  while ((vapour[azeotropeIndex] as number) > azeotropeIndex / steps) azeotropeIndex += 1;
  const azeotropeY = vapour[azeotropeIndex - 1] as number;
  const dewC = new Float64Array(steps + 2);
  let below = 0;
  for (let index = 0; index <= steps + 1; index += 1) {
    const y = Math.min(index / steps, azeotropeY);
    while (below < azeotropeIndex - 2 && (vapour[below + 1] as number) < y) below += 1;
    const from = vapour[below] as number;
    const share = (y - from) / ((vapour[below + 1] as number) - from);
    const fromC = boilsC[below] as number;
    dewC[index] = fromC + Math.min(1, share) * ((boilsC[below + 1] as number) - fromC);
  }
  const azeotropeX = azeotropeIndex / steps;
  const kelvinPerKPa =
    boilingPoint(azeotropeX, pressureKPa + 0.5).temperatureC -
    boilingPoint(azeotropeX, pressureKPa - 0.5).temperatureC;
  return { pressureKPa, boilsC, vapour, dewC, azeotropeY, kelvinPerKPa };
}

/** A table's value between two of its points; the argument is 0 … 1. */
export function lookUp(table: Float64Array, argument: number): number {
  const place = Math.max(0, Math.min(1, argument)) * steps;
  const index = Math.trunc(place);
  const from = table[index] as number;
  return from + (place - index) * ((table[index + 1] as number) - from);
}

/** Vapour share of the light third substance over a liquid with so much of it. */
export function lightVapour(x: number, light: number): number {
  if (light <= 0) return 0;
  const volatility = lightOverWater * (lightOverEthanol / lightOverWater) ** x;
  return (volatility * light) / (1 + (volatility - 1) * light);
}

/** What light vapour takes off a boiling or dew point [K]: the others only have the rest of the pressure. */
export function loweredByLightK(lightVapourFraction: number): number {
  return lightVapourFraction <= 0 ? 0 : -Math.log(1 - lightVapourFraction) / relativePressurePerK;
}

/** Heat of evaporation [J/mol], linear between the pure substances at their boiling points (CRC Handbook, from memory). */
export function heatOfEvaporation(y: number): number {
  return 40_650 - 2100 * y;
}

const strengthTable = Float64Array.from({ length: steps + 2 }, (_, index) =>
  strengthFromMoleFraction(Math.min(1, index / steps)),
);
const molarVolumeTable = Float64Array.from({ length: steps + 2 }, (_, index) => {
  const x = Math.min(1, index / steps);
  const massG = x * ethanolGPerMol + (1 - x) * waterGPerMol;
  const ethanolMassFraction = (x * ethanolGPerMol) / massG;
  return (1000 * massG) / densityKgPerM3({ ethanolMassFraction, temperatureC: 20 });
});

/** Strength [% vol at 20 °C] of an ethanol–water mixture; what is light is left out. */
export const strengthOf = (x: number): number => lookUp(strengthTable, x);
/** Molar volume of the liquid at 20 °C [mL/mol]. */
export const molarVolumeOf = (x: number): number => lookUp(molarVolumeTable, x);
export const moleFractionOf = moleFractionFromStrength;
