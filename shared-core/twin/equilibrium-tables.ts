import { azeotrope, bubblePoint, dewPoint } from '../equilibrium/index.ts';
import { molarVolumeMlPerMol } from '../thermo/index.ts';

/**
 * Equilibrium in tables for the reduced column model. From 60 to 110 kPa the vapour over a boiling liquid changes
 * by less than 0.004 in mole fraction and heights above the azeotrope up to 6 K by less than 0.03 K, so one
 * pressure serves all.
 */
export interface EquilibriumTables {
  /** Number of cells; node i stands for a mole fraction of azeotrope × i/cells. */
  readonly cells: number;
  readonly azeotropeMoleFraction: number;
  /** Vapour over a boiling liquid at the nodes, up to the azeotrope. */
  readonly vapour: Float64Array;
  /** The chord of each cell, `y = offset + slope x`. */
  readonly vapourSlope: Float64Array;
  readonly vapourOffset: Float64Array;
  /** Dew temperature of a vapour above the azeotrope's [K], at the nodes. */
  readonly dewHeightK: Float64Array;
  /** Boiling temperature of a liquid above the azeotrope's [K], at the nodes. */
  readonly boilingHeightK: Float64Array;
  readonly molarVolumeMl: Float64Array;
}

const referencePressureKPa = 90;
const cells = 1024;

let remembered: EquilibriumTables | null = null;

/** The tables, built at first use. */
export function equilibriumTables(): EquilibriumTables {
  remembered ??= buildTables();
  return remembered;
}

function buildTables(): EquilibriumTables {
  const pressureKPa = referencePressureKPa;
  const peak = azeotrope(pressureKPa);
  const curve: EquilibriumTables = {
    cells,
    azeotropeMoleFraction: peak.ethanolMoleFraction,
    vapour: new Float64Array(cells + 1),
    vapourSlope: new Float64Array(cells),
    vapourOffset: new Float64Array(cells),
    dewHeightK: new Float64Array(cells + 1),
    boilingHeightK: new Float64Array(cells + 1),
    molarVolumeMl: new Float64Array(cells + 1),
  };
  for (let node = 0; node <= cells; node += 1) {
    const ethanolMoleFraction = (peak.ethanolMoleFraction * node) / cells;
    const bubble = bubblePoint({ ethanolMoleFraction, pressureKPa });
    const dew = dewPoint({ ethanolMoleFraction, pressureKPa });
    curve.vapour[node] = bubble.vapourEthanolMoleFraction;
    curve.boilingHeightK[node] = bubble.temperatureC - peak.temperatureC;
    curve.dewHeightK[node] = dew.temperatureC - peak.temperatureC;
    curve.molarVolumeMl[node] = molarVolumeMlPerMol(ethanolMoleFraction);
  }
  const perCell = cells / peak.ethanolMoleFraction;
  for (let cell = 0; cell < cells; cell += 1) {
    const low = curve.vapour[cell] as number;
    const slope = ((curve.vapour[cell + 1] as number) - low) * perCell;
    curve.vapourSlope[cell] = slope;
    curve.vapourOffset[cell] = low - (slope * cell) / perCell;
  }
  return curve;
}

/** Reads one of the curve's tables at a mole fraction; the ends are held. */
export function readTable(
  curve: EquilibriumTables,
  table: Float64Array,
  moleFraction: number,
): number {
  const position = (cells * moleFraction) / curve.azeotropeMoleFraction;
  if (position <= 0) return table[0] as number;
  if (position >= cells) return table[cells] as number;
  // Positions are small and not negative: a bitwise floor is exact.
  const cell = position | 0;
  const low = table[cell] as number;
  return low + (position - cell) * ((table[cell + 1] as number) - low);
}
