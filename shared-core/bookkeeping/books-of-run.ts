import type { RunInput, RunSettings } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import { coverageFactor95 } from '../uncertainty/index.ts';
import { type BatchBalance, balanceBatch } from './balance-batch.ts';
import { benchDoubts } from './bench-doubts.ts';
import type { BookEntries } from './book-entries.ts';
import { type AmountMeasurement, type BookedLiquid, bookLiquid } from './book-liquid.ts';
import { type CutRecord, cutsOfRun } from './cuts-of-run.ts';
import { type FermentYield, fermentYield } from './ferment-yield.ts';
import type { StrengthMeasurement } from './strength-measurement.ts';

/** A cut with what is known of it, and where its strength comes from. */
export interface BookedCut extends CutRecord {
  readonly strengthFrom: 'measured' | 'head-temperature' | 'unknown';
  /** Null while its amount or its strength is unknown. */
  readonly booked: BookedLiquid | null;
}

/** All the books of a run. */
export interface RunBooks {
  readonly charge: BookedLiquid;
  readonly cuts: readonly BookedCut[];
  readonly residue: BookedLiquid | null;
  readonly holdUp: BookedLiquid | null;
  /** Null when no cut is booked. */
  readonly balance: BatchBalance | null;
  readonly ferment: FermentYield | null;
  readonly refluxRatio: number | null;
  /** What was taken for granted, in whole sentences. */
  readonly assumptions: readonly string[];
}

/** What the books of a run are made from. */
export interface RunToBook {
  readonly settings: Pick<RunSettings, 'charge'>;
  readonly inputs: readonly RunInput[];
  readonly verdicts: Pick<Verdicts, 'estimates'>;
  readonly endS: number;
  readonly entries?: BookEntries | undefined;
}

/**
 * The books of a run, by the balance method: charge from the settings, cuts from marks and later entries, strengths as measured or, failing
 * that, from the head temperature while the cut was collected; then {@link balanceBatch} and {@link fermentYield}.
 *
 * @param run settings (volume [mL], strength [% vol]), inputs, verdicts, endS [s] ≥ 0, entries made after the run
 * @returns books, with every assumption in words
 *
 * Source: see the functions named.
 * @example
 * const run = { settings: defaultRunSettings, inputs: [], verdicts: { estimates: [] }, endS: 0 };
 * booksOfRun(run).charge.ethanolMl.value // ≈ 31.5 ± 1e-6
 * booksOfRun(run).balance // => null
 */
export function booksOfRun({ settings, inputs, verdicts, endS, entries }: RunToBook): RunBooks {
  const assumptions = new Set<string>();
  const charge = bookLiquid({ name: 'Charge', ...chargeMeasurement(settings.charge) });
  const cuts = withEntries(cutsOfRun({ inputs, endS }), entries, endS).map((cut) =>
    bookCut(cut, verdicts.estimates, assumptions),
  );
  const residue = entries?.residue ? bookLiquid({ name: 'Residue', ...entries.residue }) : null;
  const holdUp = entries?.holdUp ? bookLiquid({ name: 'Hold-up', ...entries.holdUp }) : null;
  const booked = cuts.flatMap((cut) => cut.booked ?? []);
  const balance =
    booked.length === 0 ? null : balanceBatch({ charge, cuts: booked, residue, holdUp });
  if (cuts.length > booked.length) {
    assumptions.add('A cut without an amount or a strength is left out of the balance.');
  }
  if (balance !== null && holdUp === null) {
    assumptions.add(
      'Liquid left in the column and the condenser was not measured; it is missing from the balance.',
    );
  }
  return {
    charge,
    cuts,
    residue,
    holdUp,
    balance,
    ferment:
      entries?.sugarG === undefined || balance === null
        ? null
        : fermentYield({
            sugarG: entries.sugarG,
            fermentEthanolG: charge.ethanolG,
            productEthanolG: balance.ethanol.cutsG,
          }),
    refluxRatio: entries?.refluxRatio ?? null,
    assumptions: [...assumptions],
  };
}

function chargeMeasurement({
  volumeMl,
  strengthAbv,
  standardUncertaintyAbv,
}: RunSettings['charge']): { amount: AmountMeasurement; strength: StrengthMeasurement } {
  const { volumeMl: constant, volumeShare } = benchDoubts;
  return {
    amount: {
      by: 'volume',
      volumeMl: {
        value: volumeMl,
        standardUncertainty: Math.hypot(constant, volumeShare * volumeMl),
      },
      // The charge's volume is planned and entered as volume at 20 °C.
      temperatureC: { value: 20, standardUncertainty: benchDoubts.temperatureK },
    },
    strength: {
      by: 'stated',
      strengthAbv: { value: strengthAbv, standardUncertainty: standardUncertaintyAbv },
    },
  };
}

/** Entries made later replace what the marks say; a cut that no mark knows is added. */
function withEntries(
  cuts: readonly CutRecord[],
  entries: BookEntries | undefined,
  endS: number,
): readonly CutRecord[] {
  if (entries === undefined) return cuts;
  const numbers = new Set([
    ...cuts.map((cut) => cut.number),
    ...entries.cuts.map((cut) => cut.number),
  ]);
  return [...numbers]
    .sort((a, b) => a - b)
    .map((number) => {
      const cut = cuts.find((other) => other.number === number);
      const entry = entries.cuts.find((other) => other.number === number);
      return {
        number,
        fromS: cut?.fromS ?? cuts.at(-1)?.toS ?? 0,
        toS: cut?.toS ?? endS,
        amount: entry?.amount ?? cut?.amount ?? null,
        strength: entry?.strength ?? cut?.strength ?? null,
      };
    });
}

function bookCut(
  cut: CutRecord,
  estimates: Verdicts['estimates'],
  assumptions: Set<string>,
): BookedCut {
  const strength = cut.strength ?? strengthFromHead(cut, estimates);
  const strengthFrom =
    cut.strength !== null ? 'measured' : strength === null ? 'unknown' : 'head-temperature';
  if (strengthFrom === 'head-temperature') {
    assumptions.add(
      'Where no strength was measured it is taken from the head temperature while the cut was collected, at an even rate. That is an estimate, not a measurement.',
    );
  }
  if (cut.amount !== null) {
    assumptions.add(
      'Amounts read without a stated uncertainty: ±0.5 mL and 0.5 % for volumes, ±0.05 g for masses (k = 1).',
    );
  }
  return {
    ...cut,
    strengthFrom,
    booked:
      cut.amount === null || strength === null
        ? null
        : bookLiquid({ name: `Cut ${cut.number}`, amount: cut.amount, strength }),
  };
}

/** Mean over the cut; its errors are common to all (probe, pressure, model), so they don't average out. */
function strengthFromHead(
  { fromS, toS }: CutRecord,
  estimates: Verdicts['estimates'],
): StrengthMeasurement | null {
  const found = estimates.flatMap(({ timeS, headVapourAbv }) =>
    timeS >= fromS && timeS <= toS && headVapourAbv !== null ? [headVapourAbv] : [],
  );
  if (found.length === 0) return null;
  const mean = (of: 'value' | 'low' | 'high') =>
    found.reduce((sum, estimate) => sum + estimate[of], 0) / found.length;
  return {
    by: 'stated',
    strengthAbv: {
      value: Math.min(100, mean('value')),
      standardUncertainty: (mean('high') - mean('low')) / (2 * coverageFactor95),
    },
  };
}
