import {
  azeotropeSlopeKPerKPa,
  booksOfRun,
  type Estimate,
  heatOffForGoodS,
  type Mark,
  plateauOfRun,
  type Quantity,
} from '#shared-core';
import type { Film } from '../replay/index.ts';
import { benchMarks } from '../stores/index.ts';
import { mainFractionLastedS } from './main-fraction-lasted.ts';

/** What is compared between runs; null where a run does not have it. Times count from vapour arrival. */
export interface RunFacts {
  readonly pressureKPa: Quantity;
  readonly leastStrengthAbv: number;
  readonly azeotropeC: Quantity | null;
  /** When vapour reached the head, counted from the start of the run [s]. */
  readonly arrivedS: number | null;
  readonly plateau: ReturnType<typeof plateauOfRun>;
  readonly mainFractionLastedS: Estimate | null;
  readonly heatOffCalledS: number | null;
  readonly heatOffDoneS: number | null;
  /** At 20 °C, as the books have it [mL], and whether that is all; null where nothing was measured. */
  readonly collected: { readonly volumeMl: Quantity; readonly isWhole: boolean } | null;
}

/** The facts of one run, from its verdicts, its marks, its head, and its books with what was measured later. */
export function runFacts(film: Film, lateMarks: readonly Mark[] = []): RunFacts {
  const { verdicts, settings, inputs, endS } = film;
  const last = film.frames[film.frames.length - 1];
  const marks = last?.marks ?? [];
  const first = verdicts.stages.find(({ stage }) => stage === 'first-fraction');
  const arrivedS = first?.fromS ?? null;
  const sinceArrival = (timeS: number | undefined) =>
    timeS === undefined || arrivedS === null ? null : timeS - arrivedS;
  const plateau = last?.snapshot?.plateau;
  const { pressure } = settings;
  const pressureKPa: Quantity = {
    value: plateau?.pressureKPa ?? pressure.pressureKPa,
    standardUncertainty: plateau?.pressureStandardUncertaintyKPa ?? pressure.standardUncertaintyKPa,
  };
  const books = booksOfRun({ settings, inputs: [...inputs, ...lateMarks], verdicts, endS });
  return {
    pressureKPa,
    leastStrengthAbv: settings.leastStrengthAbv,
    azeotropeC: plateau
      ? {
          value: plateau.azeotropeC,
          standardUncertainty:
            azeotropeSlopeKPerKPa(pressureKPa.value) * pressureKPa.standardUncertainty,
        }
      : null,
    arrivedS,
    plateau: plateauOfRun(film),
    mainFractionLastedS: mainFractionLastedS(verdicts, settings.leastStrengthAbv, endS),
    heatOffCalledS: sinceArrival(
      verdicts.alarms.find(({ alarm }) => alarm === 'plateau-departure')?.raisedS,
    ),
    heatOffDoneS: sinceArrival(heatOffForGoodS(benchMarks(marks)) ?? undefined),
    collected: collectedIn(books),
  };
}

/** Poured together; where no strength is known to do that by, the volumes as they were read. */
function collectedIn({
  product,
  cuts,
  unmeasuredCuts,
}: ReturnType<typeof booksOfRun>): RunFacts['collected'] {
  const read = cuts.flatMap(({ amount }) => (amount?.by === 'volume' ? [amount.volumeMl] : []));
  if (product !== null) {
    return { volumeMl: product.volumeMl, isWhole: unmeasuredCuts.length === 0 };
  }
  if (read.length === 0) return null;
  const volumeMl = {
    value: read.reduce((sum, { value }) => sum + value, 0),
    standardUncertainty: Math.hypot(...read.map((one) => one.standardUncertainty)),
  };
  return { volumeMl, isWhole: read.length === cuts.length };
}
