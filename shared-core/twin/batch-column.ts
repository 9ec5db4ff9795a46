import { type EquilibriumCurve, readCurve } from './equilibrium-curve.ts';
import type { StillGuess } from './still-guess.ts';

/** Pot and plates of the reduced model at one moment. */
export interface BatchColumn {
  /** Liquid compositions: the pot at 0, then the plates from below. */
  readonly x: Float64Array;
  readonly plates: number;
  /** Murphree efficiency of the top plate; the others have 1. */
  readonly topEfficiency: number;
  /** Liquid on each plate [mol]. */
  readonly held: number;
  potMol: number;
  /** Vapour that leaves the top plate. */
  topY: number;
}

const mostPlates = 12;
/** A column cannot hold more than this share of the charge. */
const mostHeldShare = 0.2;

/** One column at a time is worked on, so its arrays are reused: a forecast fills hundreds. */
const scratch = {
  x: new Float64Array(mostPlates + 1),
  slope: new Float64Array(mostPlates + 1),
  offset: new Float64Array(mostPlates + 1),
  upper: new Float64Array(mostPlates + 1),
  right: new Float64Array(mostPlates + 1),
};

/**
 * The column as vapour reaches the head: each plate has filled with what rose from below, as near total reflux.
 * Valid until the next call.
 */
export function fillColumn(
  guess: StillGuess,
  chargedMol: number,
  chargedEthanolMol: number,
  curve: EquilibriumCurve,
): BatchColumn {
  const plates = Math.max(1, Math.min(mostPlates, Math.ceil(guess.plates)));
  const held = Math.min(
    (guess.holdUpMol * guess.plates) / plates,
    (mostHeldShare * chargedMol) / plates,
  );
  const { x } = scratch;
  let potMol = chargedMol;
  let potEthanol = chargedEthanolMol;
  let below = potEthanol / potMol;
  for (let plate = 1; plate <= plates; plate += 1) {
    below = readCurve(curve, curve.vapour, below);
    x[plate] = below;
    potMol -= held;
    potEthanol -= held * below;
  }
  x[0] = Math.max(1e-4, potEthanol / potMol);
  const topEfficiency = Math.min(1, Math.max(0.05, guess.plates - (plates - 1)));
  return { x, plates, topEfficiency, held, potMol, topY: readCurve(curve, curve.vapour, below) };
}

/**
 * One implicit step: `y_i ≈ a_i + k_i x_i` about the present state makes pot and plates a tridiagonal system,
 * solved by the Thomas algorithm.
 *
 * @param vapourMol vapour that rises in the step [mol]
 * @param liquidMol liquid that runs down in the step [mol]
 */
export function stepColumn(
  column: BatchColumn,
  vapourMol: number,
  liquidMol: number,
  curve: EquilibriumCurve,
): void {
  const { x, plates, topEfficiency, held, potMol } = column;
  const { slope, offset, upper, right } = scratch;
  const perCell = curve.cells / curve.azeotropeMoleFraction;
  for (let row = 0; row <= plates; row += 1) {
    const position = Math.min(curve.cells - 1e-9, (x[row] as number) * perCell);
    const cell = Math.floor(position);
    const low = curve.vapour[cell] as number;
    const rise = ((curve.vapour[cell + 1] as number) - low) * perCell;
    slope[row] = rise;
    offset[row] = low - (rise * cell) / perCell;
  }
  // Pot: (M + L − V) x' = M x + L x_1 − V y_0.
  let diagonal = potMol + liquidMol - vapourMol + vapourMol * (slope[0] as number);
  upper[0] = -liquidMol / diagonal;
  right[0] = (potMol * (x[0] as number) - vapourMol * (offset[0] as number)) / diagonal;
  for (let row = 1; row <= plates; row += 1) {
    const isTop = row === plates;
    const share = isTop ? topEfficiency : 1;
    const from = slope[row - 1] as number;
    const rising = offset[row - 1] as number;
    const k = slope[row] as number;
    const a = offset[row] as number;
    let lower = -vapourMol * share * from;
    let known = held * (x[row] as number) + vapourMol * share * (rising - a);
    diagonal = held + vapourMol * share * k + liquidMol;
    if (isTop) {
      // The reflux is the condensed top vapour (1 − e) y_(n−1) + e (a + k x_n).
      lower -= liquidMol * (1 - share) * from;
      known += liquidMol * ((1 - share) * rising + share * a);
      diagonal -= liquidMol * share * k;
    }
    const pivot = diagonal - lower * (upper[row - 1] as number);
    upper[row] = isTop ? 0 : -liquidMol / pivot;
    right[row] = (known - lower * (right[row - 1] as number)) / pivot;
  }
  for (let row = plates; row >= 0; row -= 1) {
    const above = row === plates ? 0 : (upper[row] as number) * (x[row + 1] as number);
    x[row] = Math.max(1e-6, Math.min(curve.azeotropeMoleFraction, (right[row] as number) - above));
  }
  const below =
    (offset[plates - 1] as number) + (slope[plates - 1] as number) * (x[plates - 1] as number);
  const own = (offset[plates] as number) + (slope[plates] as number) * (x[plates] as number);
  column.topY = Math.min(
    curve.azeotropeMoleFraction,
    (1 - topEfficiency) * below + topEfficiency * own,
  );
  column.potMol = potMol + liquidMol - vapourMol;
}
