import type { DistillateCourse } from '../distillate/index.ts';
import { OutOfRangeError } from '../result/index.ts';
import { assumedWords, chargeDoubtMl, type RunInput, type RunSettings } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import { type AsGiven, asGiven, worded } from '../wording/index.ts';
import { amountsAtOdds } from './amounts-at-odds.ts';
import { type BatchBalance, balanceBatch } from './balance-batch.ts';
import { benchDoubts } from './bench-doubts.ts';
import { beyondChargeWords, isMoreThanCharge, togetherBeyondChargeWords } from './beyond-charge.ts';
import type { BookEntries } from './book-entries.ts';
import {
  type AmountMeasurement,
  type BookedLiquid,
  bookLiquid,
  type LiquidMeasurement,
} from './book-liquid.ts';
import { type CutRecord, cutsOfRun, isEmptyCut } from './cuts-of-run.ts';
import { distillateOfRun } from './distillate-of-run.ts';
import { type FermentYield, fermentYield } from './ferment-yield.ts';
import { type FromFerment, fromFerment } from './from-ferment.ts';
import { liquidsMeasured, type PartlyMeasured } from './liquids-measured.ts';
import { type PooledLiquid, poolLiquids } from './pool-liquids.ts';
import type { Quantity } from './quantity.ts';
import { fromHeadWords, strengthFromHead } from './strength-from-head.ts';
import { measuredStrength, type StrengthMeasurement } from './strength-measurement.ts';

/** A cut with what is known of it, and where its strength comes from. */
export interface BookedCut extends CutRecord {
  readonly strengthFrom: 'measured' | 'head-temperature' | 'unknown';
  /** At 20 °C; known also of a measured cut that can't be booked. */
  readonly strengthAbv: BookedLiquid['strengthAbv'] | null;
  /** Null while its amount or its strength is unknown. */
  readonly booked: BookedLiquid | null;
}

/** A liquid by its name, as far as it was measured. */
export interface MeasuredLiquid extends PartlyMeasured {
  readonly liquid: string;
}

/** All the books of a run. */
export interface RunBooks {
  readonly charge: BookedLiquid;
  readonly cuts: readonly BookedCut[];
  /** All cuts that were measured poured together; null where no booked cut holds anything. */
  readonly product: PooledLiquid | null;
  /** Numbers of the cuts that hold nobody knows what; one that is known to be empty is not among them. */
  readonly unmeasuredCuts: readonly number[];
  readonly residue: BookedLiquid | null;
  readonly holdUp: BookedLiquid | null;
  /** Null when no cut is booked. */
  readonly balance: BatchBalance | null;
  readonly ferment: FermentYield | null;
  /** Null where the charge is of no ferment that was kept in this program. */
  readonly fromFerment: FromFerment | null;
  /** What came over by when; null where the head never told how strong. */
  readonly distillate: DistillateCourse | null;
  readonly refluxRatio: number | null;
  /** What the books are made from, liquid by liquid as it was measured; the sugar [g] where it is known. */
  readonly measured: readonly MeasuredLiquid[];
  readonly sugarG: Quantity | null;
  /** What was taken for granted or left out, in whole sentences. */
  readonly assumptions: readonly string[];
}

/** What the books of a run are made from. */
export interface RunToBook {
  readonly settings: Pick<RunSettings, 'charge' | 'ferment' | 'rig' | 'pressure' | 'probe'>;
  readonly inputs: readonly RunInput[];
  readonly verdicts: Pick<Verdicts, 'estimates' | 'events'>;
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
 * const run = { settings: defaultRunSettings, inputs: [], verdicts: { estimates: [], events: [] }, endS: 0 };
 * booksOfRun(run).charge.ethanolMl.value // ≈ 31.5 ± 1e-6
 * booksOfRun(run).balance // => null
 */
export function booksOfRun({ settings, inputs, verdicts, endS, entries }: RunToBook): RunBooks {
  const assumptions = new Set(assumedWords(settings, ['volume', 'strength']));
  const charge = bookLiquid({ name: 'Charge', ...chargeMeasurement(settings.charge) });
  const marked = liquidsMeasured(inputs);
  const markedCuts = [...marked.cuts].map(([number, parts]) => ({ number, ...parts }));
  const vapourUntilS =
    verdicts.estimates.findLast(({ headVapourAbv }) => headVapourAbv !== null)?.timeS ?? null;
  const received = cutsOfRun({ inputs, endS, vapourUntilS });
  const records = withEntries(withEntries(received, markedCuts, endS), entries?.cuts ?? [], endS);
  for (const words of amountsAtOdds(received, records)) assumptions.add(words);
  const dripRateMlPerMin = entries?.dripRateMlPerMin ?? null;
  const distillate = distillateOfRun({ inputs, endS, verdicts, cuts: records, dripRateMlPerMin });
  const whenFromHead = () => fromHeadWords(settings, inputs, distillate);
  const cuts = records.map((cut) =>
    bookCut(cut, { charge, distillate, whenFromHead, assumptions }),
  );
  const part = (name: string, measured: PartlyMeasured) =>
    withinCharge(bookPart(name, measured, assumptions), charge, assumptions);
  const residue = part(worded('Residue'), entries?.residue ?? marked.residue);
  const holdUp = part(worded('Hold-up'), entries?.holdUp ?? marked.holdUp);
  const sugarG = entries?.sugarG ?? marked.sugarG ?? sugarOfFerment(settings, assumptions);
  const booked = cuts.flatMap((cut) => cut.booked ?? []);
  const unmeasuredCuts = cuts.flatMap((cut) =>
    cut.booked === null && !isEmptyCut(cut) ? [cut.number] : [],
  );
  const isCutUnmeasured = unmeasuredCuts.length > 0;
  const balance =
    booked.length === 0
      ? null
      : balanceBatch({ charge, cuts: booked, isCutUnmeasured, residue, holdUp });
  if (isCutUnmeasured) {
    assumptions.add(worded('A cut without an amount or a strength is left out of the balance.'));
  }
  if (balance !== null && isCutUnmeasured) {
    assumptions.add(
      worded(
        'What cut {cuts} held is not known. So the recovery is at least as told, nothing says whether the balance closes, and no simple distillation can be set beside it.',
        { cuts: unmeasuredCuts.join(', ') },
      ),
    );
  }
  const liquids = [...booked, residue, holdUp].filter((liquid) => liquid !== null);
  if (balance !== null && isMoreThanCharge(liquids, charge)) {
    assumptions.add(togetherBeyondChargeWords(liquids, charge));
  }
  if (balance !== null && holdUp === null) {
    assumptions.add(
      settings.rig.plates === 0
        ? worded(
            'Liquid left on the glass and in the condenser was not measured; it is missing from the balance.',
          )
        : worded(
            'Liquid left in the column and the condenser was not measured; it is missing from the balance.',
          ),
    );
  }
  const measured: readonly MeasuredLiquid[] = [
    { liquid: 'charge', ...chargeMeasurement(settings.charge) },
    ...cuts.map(({ number, amount, strength }) => ({ liquid: `cut ${number}`, amount, strength })),
    { liquid: 'residue', ...(entries?.residue ?? marked.residue) },
    { liquid: 'hold-up', ...(entries?.holdUp ?? marked.holdUp) },
  ];
  const collectedG = balance?.ethanol.cutsG ?? null;
  const yields =
    sugarG === null || collectedG === null
      ? null
      : fermentYield({
          sugarG,
          fermentEthanolG: charge.ethanolG,
          productEthanolG: collectedG,
        });
  const { amount } = chargeMeasurement(settings.charge);
  return {
    charge,
    measured,
    sugarG,
    cuts,
    // A receiver that stayed empty is booked with 0 mL; alone it is no product.
    product: booked.some(({ massG }) => massG.value > 1e-6) ? poolLiquids(booked) : null,
    unmeasuredCuts,
    residue,
    holdUp,
    balance,
    ferment: yields,
    fromFerment:
      settings.ferment == null
        ? null
        : fromFerment(settings.ferment, amount, {
            sugarG,
            chargedG: charge.ethanolG,
            collectedG,
            isCollectedWhole: !isCutUnmeasured,
            yields,
          }),
    distillate,
    refluxRatio: entries?.refluxRatio ?? null,
    assumptions: [...assumptions],
  };
}

/** What of the ferment's sugar belongs to this charge, where the ferment was kept in this program. */
function sugarOfFerment(
  { charge, ferment }: RunToBook['settings'],
  assumptions: Set<string>,
): Quantity | null {
  const perL = ferment?.sugarGPerL ?? null;
  if (perL === null) return null;
  assumptions.add(
    worded(
      'The sugar is that of the ferment “{ferment}”, {sugar} g/L as it began, for the volume that was charged.',
      { ferment: asGiven(ferment?.name ?? ''), sugar: perL.value.toFixed(0) },
    ),
  );
  const litres = charge.volumeMl / 1000;
  return {
    value: perL.value * litres,
    standardUncertainty: Math.hypot(
      litres * perL.standardUncertainty,
      (chargeDoubtMl(charge) / 1000) * perL.value,
    ),
  };
}

function chargeMeasurement(charge: RunSettings['charge']): {
  amount: AmountMeasurement;
  strength: StrengthMeasurement;
} {
  const { volumeMl, strengthAbv, standardUncertaintyAbv } = charge;
  return {
    amount: {
      by: 'volume',
      volumeMl: { value: volumeMl, standardUncertainty: chargeDoubtMl(charge) },
      // The charge's volume is planned and entered as volume at 20 °C.
      temperatureC: { value: 20, standardUncertainty: benchDoubts.temperatureK },
    },
    strength: {
      by: 'stated',
      strengthAbv: { value: strengthAbv, standardUncertainty: standardUncertaintyAbv },
    },
  };
}

/** What was measured of a cut by its number. */
interface CutEntry {
  readonly number: number;
  readonly amount?: AmountMeasurement | null | undefined;
  readonly strength?: StrengthMeasurement | null | undefined;
}

/** Later measurements replace earlier ones; a cut that nothing else knows is added. */
function withEntries(
  cuts: readonly CutRecord[],
  entries: readonly CutEntry[],
  endS: number,
): readonly CutRecord[] {
  if (entries.length === 0) return cuts;
  const numbers = new Set([...cuts, ...entries].map(({ number }) => number));
  return [...numbers]
    .sort((a, b) => a - b)
    .map((number) => {
      const cut = cuts.find((other) => other.number === number);
      const entry = entries.find((other) => other.number === number);
      return {
        number,
        fromS: cut?.fromS ?? cuts.at(-1)?.toS ?? 0,
        toS: cut?.toS ?? endS,
        amount: entry?.amount ?? cut?.amount ?? null,
        strength: entry?.strength ?? cut?.strength ?? null,
      };
    });
}

/** Null for more than what was charged, as after a slip of the pen. */
function withinCharge(
  liquid: BookedLiquid | null,
  charge: BookedLiquid,
  assumptions: Set<string>,
): BookedLiquid | null {
  if (liquid === null || !isMoreThanCharge([liquid], charge)) return liquid;
  assumptions.add(beyondChargeWords(liquid, charge));
  return null;
}

/** Residue or hold-up, once both its amount and its strength are known. */
function bookPart(
  name: string,
  { amount, strength }: PartlyMeasured,
  assumptions: Set<string>,
): BookedLiquid | null {
  if (amount === null && strength === null) return null;
  if (amount === null || strength === null) {
    assumptions.add(
      amount === null
        ? worded('{name}: its volume or mass was not measured, so it is not in the balance.', {
            name,
          })
        : worded('{name}: its strength or density was not measured, so it is not in the balance.', {
            name,
          }),
    );
    return null;
  }
  return bookMeasured({ name, amount, strength }, assumptions);
}

/** Null where the readings belong to no mixture of ethanol and water, as after a slip of the pen. */
function bookMeasured(liquid: LiquidMeasurement, assumptions: Set<string>): BookedLiquid | null {
  assumptions.add(assumedDoubts);
  if ('instrument' in liquid.strength && liquid.strength.instrument !== undefined) {
    const { name } = liquid.strength.instrument;
    assumptions.add(
      worded(
        '{name}: all readings were taken with one and the same instrument, whose own error is in each of them.',
        { name },
      ),
    );
  }
  try {
    return bookLiquid(liquid);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    assumptions.add(
      worded(
        '{name}: no mixture of ethanol and water has these readings ({message}), so it is not in the balance.',
        { name: liquid.name, message: rangeWords(error) },
      ),
    );
    return null;
  }
}

/** What each liquid is booked against. */
interface Bookkeeping {
  readonly charge: BookedLiquid;
  readonly distillate: DistillateCourse | null;
  readonly whenFromHead: () => readonly string[];
  readonly assumptions: Set<string>;
}

/** A strength that nobody measured is estimated only where there is an amount that it could be of. */
function bookCut(
  cut: CutRecord,
  { charge, distillate, whenFromHead, assumptions }: Bookkeeping,
): BookedCut {
  const { number, amount } = cut;
  const name = worded('Cut {number}', { number });
  const fromHead =
    cut.strength !== null || amount === null ? null : strengthFromHead(cut, distillate);
  const strength = cut.strength ?? fromHead;
  if (fromHead !== null) for (const words of whenFromHead()) assumptions.add(words);
  const booked =
    amount === null || strength === null
      ? null
      : withinCharge(bookMeasured({ name, amount, strength }, assumptions), charge, assumptions);
  return {
    ...cut,
    booked,
    strengthAbv: booked?.strengthAbv ?? readStrengthAbv(cut.strength),
    strengthFrom:
      cut.strength !== null ? 'measured' : booked === null ? 'unknown' : 'head-temperature',
  };
}

/** Null where nothing was read, or nothing that a mixture of ethanol and water can show. */
function readStrengthAbv(strength: StrengthMeasurement | null): BookedCut['strengthAbv'] {
  if (strength === null) return null;
  try {
    return measuredStrength(strength).alcoholByVolume;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

const assumedDoubts = worded(
  'Readings without a stated uncertainty (k = 1): volumes {volumeMl} mL and {volumePercent} %, masses {massG} g, alcoholometer {alcoholometerAbv} % vol and hydrometer {hydrometerKgPerM3} kg/m³, each mostly of the instrument itself, temperatures {temperatureK} K.',
  {
    volumeMl: benchDoubts.volumeMl,
    volumePercent: 100 * benchDoubts.volumeShare,
    massG: benchDoubts.massG,
    alcoholometerAbv: benchDoubts.alcoholometerAbv,
    hydrometerKgPerM3: benchDoubts.hydrometerKgPerM3,
    temperatureK: benchDoubts.temperatureK,
  },
);

/** What was read, and what can be; which quantity that is, the sentence around it says. */
function rangeWords(error: RangeError): string | AsGiven {
  if (!(error instanceof OutOfRangeError)) return asGiven(error.message);
  const { value, low, high, unit } = error.detail;
  const digits = (number: number) => `${Number(number.toPrecision(4))}`;
  return worded('{value}, where {low} to {high} is possible', {
    value: `${digits(value)} ${unit}`.trim(),
    low: digits(low),
    high: `${digits(high)} ${unit}`.trim(),
  });
}
