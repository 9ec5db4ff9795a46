/**
 * Ethanol–water as the second still knows it: Van Laar with Antoine's equation, densities of twelve mixtures. On purpose not
 * the mixture of `shared-core`: what a monitor gets wrong together with its own simulator only another one can show.
 * All constants from memory.
 */
const vanLaar = { ethanol: 1.6798, water: 0.9227 };
const antoine = {
  ethanol: { a: 8.20417, b: 1642.89, c: 230.3 },
  water: { a: 8.07131, b: 1730.63, c: 233.426 },
};
const kPaPerMmHg = 0.133322;
const molarMassG = { ethanol: 46.07, water: 18.015 };
/** Density at 20 °C [g/mL] by mass per cent. */
const densities: readonly (readonly [massPercent: number, gPerMl: number])[] = [
  [0, 0.9982],
  [10, 0.9819],
  [20, 0.9687],
  [30, 0.9539],
  [40, 0.9352],
  [50, 0.9139],
  [60, 0.8912],
  [70, 0.8677],
  [80, 0.8436],
  [90, 0.818],
  [95, 0.8042],
  [100, 0.7893],
];

/** Nodes lie at equal steps of the root of the mole fraction: closest where a pot runs out of ethanol. */
export const nodes = 1200;

/** What boils at one pressure, by node. */
export interface BoilingTable {
  readonly temperatureC: Float64Array;
  readonly vapour: Float64Array;
  /** How the boiling point moves with pressure [K/kPa]. */
  readonly perKPa: Float64Array;
}

const vapourPressureKPa = (
  { a, b, c }: { readonly a: number; readonly b: number; readonly c: number },
  temperatureC: number,
): number => kPaPerMmHg * 10 ** (a - b / (temperatureC + c));

/** Boiling temperature [°C] of a liquid, by halving, and the vapour over it. */
export function boils(
  x: number,
  pressureKPa: number,
): { readonly temperatureC: number; readonly y: number } {
  const mixed = vanLaar.ethanol * x + vanLaar.water * (1 - x);
  const ethanol = x * Math.exp(vanLaar.ethanol * ((vanLaar.water * (1 - x)) / mixed) ** 2);
  const water = (1 - x) * Math.exp(vanLaar.water * ((vanLaar.ethanol * x) / mixed) ** 2);
  let low = 30;
  let high = 115;
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    const total =
      ethanol * vapourPressureKPa(antoine.ethanol, middle) +
      water * vapourPressureKPa(antoine.water, middle);
    if (total > pressureKPa) high = middle;
    else low = middle;
  }
  return {
    temperatureC: low,
    y: (ethanol * vapourPressureKPa(antoine.ethanol, low)) / pressureKPa,
  };
}

export function boilingTable(pressureKPa: number): BoilingTable {
  const table: BoilingTable = {
    temperatureC: new Float64Array(nodes),
    vapour: new Float64Array(nodes),
    perKPa: new Float64Array(nodes),
  };
  for (let node = 0; node < nodes; node += 1) {
    const x = (node / (nodes - 1)) ** 2;
    const here = boils(x, pressureKPa);
    table.temperatureC[node] = here.temperatureC;
    table.vapour[node] = here.y;
    table.perKPa[node] = 2 * (boils(x, pressureKPa + 0.5).temperatureC - here.temperatureC);
  }
  return table;
}

const massFraction = (y: number): number =>
  (molarMassG.ethanol * y) / (molarMassG.ethanol * y + molarMassG.water * (1 - y));

function densityGPerMl(massPercent: number): number {
  const above = densities.findIndex(([percent]) => percent >= massPercent);
  if (above <= 0) return densities[0]?.[1] as number;
  const [lowPercent, low] = densities[above - 1] as readonly [number, number];
  const [highPercent, high] = densities[above] as readonly [number, number];
  return low + ((massPercent - lowPercent) / (highPercent - lowPercent)) * (high - low);
}

/** Strength [% vol] of a mixture of mole fraction y. */
export function strengthAbv(y: number): number {
  const percent = 100 * massFraction(y);
  return (percent * densityGPerMl(percent)) / densityGPerMl(100);
}

/** Volume of one mole at 20 °C [mL/mol]. */
export function molarVolumeMl(y: number): number {
  const gPerMol = molarMassG.ethanol * y + molarMassG.water * (1 - y);
  return gPerMol / densityGPerMl(100 * massFraction(y));
}

/** Mole fraction of a mixture of this strength [% vol], by halving. */
export function moleFractionOf(abv: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (strengthAbv(middle) < abv) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
