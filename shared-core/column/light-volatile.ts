import type { LightVolatiles } from './batch-setup.ts';
import { tableCells, type VapourTable } from './vapour-table.ts';

/** A volatile that a ferment holds in traces: too little to change the boiling, enough to smell. */
export interface LightVolatile {
  readonly name: keyof LightVolatiles;
  readonly molarMassGPerMol: number;
  /** Activity coefficient at infinite dilution in water and in ethanol, near the boil. */
  readonly activityInWater: number;
  readonly activityInEthanol: number;
  /** log10(p/Pa) = A − B/(T/K + C). */
  readonly antoine: readonly [number, number, number];
}

/**
 * Vapour pressures: Poling, Prausnitz & O'Connell, 5th ed. (2001); acetaldehyde's is a fit of ours to its
 * Wagner equation (McGarry 1983) from 60 to 105 °C (1e-4). Methanol's activity follows Kurihara et al., J. Chem. Eng.
 * Data 40 (1995) 679 at 60 °C; the other two are orders of magnitude from memory.
 */
export const lightVolatiles: readonly LightVolatile[] = [
  {
    name: 'acetaldehydeMgPerL',
    molarMassGPerMol: 44.053,
    activityInWater: 4,
    activityInEthanol: 1.2,
    antoine: [9.72333, 1358.496, -5.25],
  },
  {
    name: 'methanolMgPerL',
    molarMassGPerMol: 32.042,
    activityInWater: 2.25,
    activityInEthanol: 0.94,
    antoine: [10.20277, 1580.08, -33.65],
  },
  {
    name: 'ethylAcetateMgPerL',
    molarMassGPerMol: 88.106,
    activityInWater: 65,
    activityInEthanol: 2,
    antoine: [9.13361, 1195.13, -60.68],
  },
];

/** Molar volume of ethanol relative to water's: turns mole into volume fractions. */
const volumeRatio = 58.4 / 18.05;

/**
 * Ratio of the volatile's mole fraction in vapour to that in the boiling liquid, `K = γ(x) p(T)/P`, with
 * `ln γ = ln γE + (ln γW − ln γE)(1 − φ)²`, φ the volume fraction of ethanol.
 */
export function volatilityRatio(
  volatile: LightVolatile,
  ethanolMoleFraction: number,
  temperatureC: number,
  pressureKPa: number,
): number {
  const x = ethanolMoleFraction;
  const ethanolVolumeFraction = (volumeRatio * x) / (1 + (volumeRatio - 1) * x);
  const inWater = Math.log(volatile.activityInWater);
  const inEthanol = Math.log(volatile.activityInEthanol);
  const logActivity = inEthanol + (inWater - inEthanol) * (1 - ethanolVolumeFraction) ** 2;
  const [a, b, c] = volatile.antoine;
  const saturationKPa = 10 ** (a - b / (temperatureC + 273.15 + c)) / 1000;
  return (Math.exp(logActivity) * saturationKPa) / pressureKPa;
}

/** {@link volatilityRatio} at the nodes of the table (at the pressure at which the run begins). */
export function tabulateVolatilityRatio(volatile: LightVolatile, table: VapourTable): Float64Array {
  return Float64Array.from(table.bubbleTemperatureC, (temperatureC, node) =>
    volatilityRatio(volatile, (node / tableCells) ** 2, temperatureC, table.pressureKPa),
  );
}
