import { strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { molarVolumeMlPerMol } from '../thermo/index.ts';

/** Volume and strength are read for every sample: tabulated, they cost next to nothing. */
const cells = 2048;

interface LiquidTable {
  readonly molarVolumeMl: Float64Array;
  readonly strengthAbv: Float64Array;
}

let table: LiquidTable | undefined;

function liquidTable(): LiquidTable {
  if (table !== undefined) return table;
  const molarVolumeMl = new Float64Array(cells + 1);
  const strengthAbv = new Float64Array(cells + 1);
  for (let node = 0; node <= cells; node++) {
    const x = node / cells;
    molarVolumeMl[node] = molarVolumeMlPerMol(x);
    strengthAbv[node] = strengthFromMoleFraction(x);
  }
  table = { molarVolumeMl, strengthAbv };
  return table;
}

function at(values: Float64Array, x: number): number {
  const scaled = x * cells;
  const cell = Math.min(Math.floor(scaled), cells - 1);
  const low = values[cell] as number;
  return low + (scaled - cell) * ((values[cell + 1] as number) - low);
}

/** Volume at 20 °C [mL] of amounts of ethanol and water [mol]. */
export function volumeMl(ethanolMol: number, waterMol: number): number {
  const total = ethanolMol + waterMol;
  return total > 0 ? total * at(liquidTable().molarVolumeMl, ethanolMol / total) : 0;
}

/** Strength [% vol at 20 °C] of a liquid, or of the condensed vapour, of this ethanol mole fraction. */
export function strengthAbv(ethanolMoleFraction: number): number {
  return at(liquidTable().strengthAbv, ethanolMoleFraction);
}
