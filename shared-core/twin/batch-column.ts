import { type EquilibriumTables, readTable } from './equilibrium-tables.ts';
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
const leastMoleFraction = 1e-6;
/** A column cannot hold more than this share of the charge. */
const mostHeldShare = 0.2;

/** One column at a time is worked on, so its arrays are reused: a forecast fills hundreds. */
const scratch = {
  x: new Float64Array(mostPlates + 1),
  full: new Float64Array(mostPlates + 1),
  upper: new Float64Array(mostPlates + 1),
  right: new Float64Array(mostPlates + 1),
};

/** Steps of Newton's method to the steady profile, and how often the pot gives up what the plates have taken. */
const settlingSteps = 5;
const settlingRounds = 2;
/** How far the plates have gone from one profile to the other when the head is first read; by simulation. */
const settledShare = 0.5;

/**
 * The column shortly after vapour has reached the head, filled from the pot: on the way from total reflux, as each
 * plate fills with what rises from below, to the steady state at the reflux it has. Valid until the next call.
 */
export function fillColumn(
  guess: StillGuess,
  chargedMol: number,
  chargedEthanolMol: number,
  flows: ColumnFlows,
  curve: EquilibriumTables,
): BatchColumn {
  const plates = Math.max(1, Math.min(mostPlates, Math.ceil(guess.plates)));
  const held = Math.min(
    (guess.holdUpMol * guess.plates) / plates,
    (mostHeldShare * chargedMol) / plates,
  );
  const { x, full } = scratch;
  const topEfficiency = Math.min(1, Math.max(0.05, guess.plates - (plates - 1)));
  const potMol = chargedMol - held * plates;
  const settling: BatchColumn = { x, plates, topEfficiency, held: 0, potMol: 0, topY: 0 };
  let potX = chargedEthanolMol / chargedMol;
  let below = potX;
  for (let plate = 1; plate <= plates; plate += 1) {
    below = readTable(curve, curve.vapour, below);
    x[plate] = below;
    full[plate] = below;
  }
  for (let round = 0; round < settlingRounds; round += 1) {
    for (let step = 0; step < settlingSteps; step += 1) {
      // A pot without end: its composition stands while the plates settle.
      settling.potMol = 1e9;
      x[0] = potX;
      stepColumn(settling, flows, curve);
    }
    let heldEthanol = 0;
    for (let plate = 1; plate <= plates; plate += 1) {
      const settled = x[plate] as number;
      x[plate] = settledShare * settled + (1 - settledShare) * (full[plate] as number);
      heldEthanol += held * (x[plate] as number);
    }
    potX = Math.max(1e-4, (chargedEthanolMol - heldEthanol) / potMol);
  }
  x[0] = potX;
  return { x, plates, topEfficiency, held, potMol, topY: settling.topY };
}

/** What moves in one step [mol]. */
export interface ColumnFlows {
  /** Vapour that leaves the pot. */
  vapourMol: number;
  /** Of it, what the wall condenses on its way up, as much on one plate as on the next. */
  lostMol: number;
  distillateMol: number;
}

/**
 * One implicit step: `y_i ≈ a_i + k_i x_i` about the present state makes pot and plates a tridiagonal system,
 * solved by the Thomas algorithm. The vapour thins on its way up, `V_i = V − loss i/N`, and the liquid grows on its
 * way down, `L_i = V_(i−1) − D`: what a plate's wall condenses helps only the plates below.
 *
 * A forecast takes some hundred thousand of these: pot, plates and top are written out one after the other, so that
 * each row does only its own arithmetic and hands the row below over in variables.
 */
export function stepColumn(
  column: BatchColumn,
  flows: ColumnFlows,
  curve: EquilibriumTables,
): void {
  const { x, plates, topEfficiency, held, potMol } = column;
  const { vapourMol, lostMol, distillateMol } = flows;
  const { upper, right } = scratch;
  const { vapourSlope, vapourOffset, azeotropeMoleFraction } = curve;
  const perCell = curve.cells / azeotropeMoleFraction;
  const lastCell = curve.cells - 1;

  // Pot: (M + L − V) x' = M x + L x_1 − V y_0.
  const potX = x[0] as number;
  // Compositions are positive and small: a bitwise floor is exact.
  const potCell = Math.min(lastCell, (potX * perCell) | 0);
  let k = vapourSlope[potCell] as number;
  let a = vapourOffset[potCell] as number;
  const potDiagonal = potMol - distillateMol + vapourMol * k;
  let toUpper = -(vapourMol - distillateMol) / potDiagonal;
  let solved = (potMol * potX - vapourMol * a) / potDiagonal;
  upper[0] = toUpper;
  right[0] = solved;

  let entering = vapourMol;
  for (let row = 1; row < plates; row += 1) {
    const plateX = x[row] as number;
    const cell = Math.min(lastCell, (plateX * perCell) | 0);
    const ownK = vapourSlope[cell] as number;
    const ownA = vapourOffset[cell] as number;
    const leaving = vapourMol - (lostMol * row) / plates;
    const lower = -entering * k;
    const known = held * plateX + entering * a - leaving * ownA;
    const pivot = held + leaving * ownK + entering - distillateMol - lower * toUpper;
    toUpper = (distillateMol - leaving) / pivot;
    solved = (known - lower * solved) / pivot;
    upper[row] = toUpper;
    right[row] = solved;
    entering = leaving;
    k = ownK;
    a = ownA;
  }

  // Top: its reflux is the condensed top vapour (1 − e) y_(n−1) + e (a + k x_n).
  const missed = 1 - topEfficiency;
  const topX = x[plates] as number;
  const topCell = Math.min(lastCell, (topX * perCell) | 0);
  const topK = vapourSlope[topCell] as number;
  const topA = vapourOffset[topCell] as number;
  const leaving = vapourMol - (lostMol * plates) / plates;
  const refluxMol = leaving - distillateMol;
  // The vapour from below, less the part of it that passes an imperfect plate unchanged.
  const met = entering - leaving * missed;
  const lower = -met * k - refluxMol * missed * k;
  const known =
    held * topX +
    met * a -
    leaving * topEfficiency * topA +
    refluxMol * (missed * a + topEfficiency * topA);
  const diagonal =
    held +
    leaving * topEfficiency * topK +
    entering -
    distillateMol -
    refluxMol * topEfficiency * topK;
  let above = withinCurve((known - lower * solved) / (diagonal - lower * toUpper), curve);
  x[plates] = above;
  const ownY = topA + topK * above;
  for (let row = plates - 1; row >= 0; row -= 1) {
    above = withinCurve((right[row] as number) - (upper[row] as number) * above, curve);
    x[row] = above;
  }
  const belowY = a + k * (x[plates - 1] as number);
  column.topY = Math.min(azeotropeMoleFraction, missed * belowY + topEfficiency * ownY);
  column.potMol = potMol - distillateMol;
}

function withinCurve(moleFraction: number, { azeotropeMoleFraction }: EquilibriumTables): number {
  return Math.max(leastMoleFraction, Math.min(azeotropeMoleFraction, moleFraction));
}
