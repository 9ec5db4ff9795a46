import { moleFractionFromMassFraction } from '../alcoholometry/index.ts';
import {
  type ApparentPlates,
  apparentPlates,
  type BookedCut,
  type BookedLiquid,
  propagateUncertainty,
  type RunBooks,
} from '../bookkeeping/index.ts';
import { moleFractionEstimate } from '../diagram/index.ts';
import { coverageFactor95, type Estimate, mapEstimate } from '../uncertainty/index.ts';
import type { RunPlateau } from './plateau-of-run.ts';
import type { ProcessedRow } from './processed-rows.ts';

/** The plates of a run, and which pair of compositions they were counted between. */
export interface RunPlates {
  readonly plates: ApparentPlates;
  readonly distillateMoleFraction: Estimate;
  readonly potMoleFraction: Estimate;
  readonly pressureKPa: number;
  /** In words, for the report. */
  readonly basis: string;
}

/**
 * Plates between the main cut and the pot halfway through it, by the ethanol balance. Without a cut that was measured, or
 * after one that was not, nobody knows what the pot held then: between the head vapour when the plateau begins and the charge.
 */
export function platesOfRun(
  books: RunBooks,
  plateau: RunPlateau | null,
  rows: readonly ProcessedRow[],
): RunPlates | null {
  const main = mainCut(books.cuts);
  const pressureKPa = plateau?.pressureKPa ?? rows.at(-1)?.pressureKPa ?? 101.325;
  const isPotKnown = unmeasuredBeforeMain(books).length === 0;
  if (main?.booked != null && main.strengthFrom === 'measured' && isPotKnown) {
    const earlier = books.cuts.flatMap((cut) =>
      cut.number < main.number && cut.booked !== null ? [cut.booked] : [],
    );
    return count(
      mapEstimate(main.booked.ethanolMassFraction, moleFractionFromMassFraction),
      potHalfway(books.charge, earlier, main.booked),
      pressureKPa,
      books.refluxRatio,
      `between cut ${main.number} as measured and the pot halfway through it, from the ethanol balance (hold-up neglected)`,
    );
  }
  const span = plateau?.statistics.span;
  if (span === undefined) return null;
  // How strong the vapour is, is told only once the head has come to rest.
  const first = rows.find(
    ({ timeS, vapourAbv }) => vapourAbv !== null && timeS >= span.fromS && timeS <= span.toS,
  );
  if (first?.vapourAbv == null) return null;
  return count(
    moleFractionEstimate(first.vapourAbv),
    mapEstimate(books.charge.ethanolMassFraction, moleFractionFromMassFraction),
    pressureKPa,
    books.refluxRatio,
    'between the head vapour at the beginning of the plateau, as the monitor first told it there, and the charge (column hold-up neglected)',
  );
}

/** Cuts taken away before the main one that hold nobody knows what, by their numbers. */
export function unmeasuredBeforeMain({ cuts, unmeasuredCuts }: RunBooks): readonly number[] {
  const main = mainCut(cuts);
  return main?.booked == null ? [] : unmeasuredCuts.filter((number) => number < main.number);
}

/** The cut with the most ethanol. */
export function mainCut(cuts: readonly BookedCut[]): BookedCut | undefined {
  return cuts.toSorted((a, b) => ethanolG(b) - ethanolG(a))[0];
}

const ethanolG = ({ booked }: BookedCut) => booked?.ethanolG.value ?? 0;

function potHalfway(
  charge: BookedLiquid,
  earlier: readonly BookedLiquid[],
  main: BookedLiquid,
): Estimate | null {
  const inputs = [charge, ...earlier, main].flatMap(({ name, massG, ethanolG: ethanol }) => [
    { name: `${name}, ethanol`, reason: 'as booked [g]', ...massOnly(ethanol) },
    { name: `${name}, mass`, reason: 'as booked [g]', ...massOnly(massG) },
  ]);
  const left = (values: readonly number[], offset: 0 | 1) =>
    values.reduce((sum, value, index) => {
      if (index % 2 !== offset) return sum;
      const liquid = index >> 1;
      return sum + value * (liquid === 0 ? 1 : liquid === earlier.length + 1 ? -0.5 : -1);
    }, 0);
  const { value, standardUncertainty } = propagateUncertainty(
    inputs,
    (values) => left(values, 0) / Math.max(1e-9, left(values, 1)),
  );
  if (!(value > 1e-4 && value < 1)) return null;
  const reach = coverageFactor95 * standardUncertainty;
  return mapEstimate(
    { value, low: Math.max(1e-5, value - reach), high: Math.min(1, value + reach) },
    moleFractionFromMassFraction,
  );
}

const massOnly = ({
  value,
  standardUncertainty,
}: {
  value: number;
  standardUncertainty: number;
}) => ({
  value,
  standardUncertainty,
});

function count(
  distillateMoleFraction: Estimate,
  potMoleFraction: Estimate | null,
  pressureKPa: number,
  refluxRatio: number | null,
  basis: string,
): RunPlates | null {
  if (potMoleFraction === null) return null;
  if (distillateMoleFraction.value <= potMoleFraction.value + 0.01) return null;
  if (distillateMoleFraction.value >= 1) return null;
  return {
    plates: apparentPlates({ distillateMoleFraction, potMoleFraction, pressureKPa, refluxRatio }),
    distillateMoleFraction,
    potMoleFraction,
    pressureKPa,
    basis,
  };
}
