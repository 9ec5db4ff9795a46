import { requireInRange } from '../result/index.ts';
import { worded } from '../wording/index.ts';
import type { BookedLiquid } from './book-liquid.ts';
import { type DerivedQuantity, propagateUncertainty } from './propagate-uncertainty.ts';
import type { Quantity } from './quantity.ts';
import { inputsOfSum, sumOfLiquids } from './sum-liquids.ts';

/** What went in and what came out. */
export interface BatchBooks {
  readonly charge: BookedLiquid;
  readonly cuts: readonly BookedLiquid[];
  /** Whether something was collected besides that nobody measured; none where left out. */
  readonly isCutUnmeasured?: boolean;
  /** What was left in the pot, if it was measured. */
  readonly residue: BookedLiquid | null;
  /** Liquid left in column and condenser, if it was measured or estimated. */
  readonly holdUp: BookedLiquid | null;
}

/** One substance's balance. */
export interface Balance {
  readonly inG: Quantity;
  readonly cutsG: Quantity;
  readonly residueG: Quantity | null;
  readonly holdUpG: Quantity | null;
  /** In minus everything accounted for [g]; null while the residue or a cut is unknown. */
  readonly missingG: Quantity | null;
  /** Accounted for, of what went in [%]; null while the residue or a cut is unknown. */
  readonly closurePercent: DerivedQuantity | null;
  /** Whether what is missing is within the expanded uncertainty (k = 2); null while the residue or a cut is unknown. */
  readonly closes: boolean | null;
  /** In the cuts that were measured, of what went in [%]. */
  readonly recoveryPercent: DerivedQuantity;
}

export interface BatchBalance {
  readonly total: Balance;
  readonly ethanol: Balance;
}

/**
 * Total-mass and ethanol balance of a run: `recovery = 100 Σ cuts/charge`,
 * `closure = 100 (Σ cuts + residue + hold-up)/charge`, `missing = charge − Σ cuts − residue − hold-up`.
 *
 * Without a measured residue there is no closure, only a recovery: taking the residue from the difference
 * would make every balance close. Nor is there with a cut that was not measured: it is not empty for that, and the recovery is
 * then a least one.
 *
 * @param books charge, cuts, residue and hold-up, from {@link bookLiquid}
 * @returns masses [g] and percentages of the charge [%], with standard uncertainties (k = 1); readings taken
 * with one and the same instrument share its error, all else is taken as independent
 * @throws OutOfRangeError when the charge holds no liquid or no ethanol
 *
 * Source: conservation of mass; JCGM 100:2008, equations (10) and (16), 5.2.2; `closes` is judged with k = 2 (its 6.3.3).
 * @example
 * const exact = (value) => ({ value, standardUncertainty: 0 });
 * const liquid = (massG, abv) => bookLiquid({ name: '', amount: { by: 'mass', massG: exact(massG) }, strength: { by: 'stated', strengthAbv: exact(abv) } });
 * const books = { charge: liquid(250, 11), cuts: [liquid(20, 90)], residue: liquid(230, 0), holdUp: null };
 * balanceBatch(books).total.closurePercent.value // => 100
 * balanceBatch({ ...books, residue: null }).ethanol.closurePercent // => null
 */
export function balanceBatch(books: BatchBooks): BatchBalance {
  return {
    total: balanceOf(books, 'massG'),
    ethanol: balanceOf(books, 'ethanolG'),
  };
}

function balanceOf(
  { charge, cuts, isCutUnmeasured = false, residue, holdUp }: BatchBooks,
  of: 'massG' | 'ethanolG',
): Balance {
  const inG = charge[of];
  requireInRange(of === 'massG' ? 'mass charged' : 'ethanol charged', inG.value, 1e-6, 1e9, 'g');
  const out =
    residue === null || isCutUnmeasured
      ? null
      : [...cuts, residue, ...(holdUp === null ? [] : [holdUp])];
  const percentOfCharge = (parts: readonly BookedLiquid[]) =>
    propagateUncertainty(
      [
        { name: worded('Charge'), reason: 'as booked [g]', ...pick(inG) },
        ...inputsOfSum(parts, of),
      ],
      ([charged = 1, ...others]) => (100 * others.reduce((sum, part) => sum + part, 0)) / charged,
    );
  const accounted = out === null ? null : sumOfLiquids(out, of);
  const missingG =
    accounted === null
      ? null
      : {
          value: inG.value - accounted.value,
          standardUncertainty: Math.hypot(inG.standardUncertainty, accounted.standardUncertainty),
        };
  return {
    inG: pick(inG),
    cutsG: sumOfLiquids(cuts, of),
    residueG: residue === null ? null : pick(residue[of]),
    holdUpG: holdUp === null ? null : pick(holdUp[of]),
    missingG,
    closurePercent: out === null ? null : percentOfCharge(out),
    closes: missingG === null ? null : Math.abs(missingG.value) <= 2 * missingG.standardUncertainty,
    recoveryPercent: percentOfCharge(cuts),
  };
}

function pick({ value, standardUncertainty }: Quantity): Quantity {
  return { value, standardUncertainty };
}
