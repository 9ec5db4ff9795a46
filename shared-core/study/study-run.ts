import { ethanolMolarMassGPerMol, waterMolarMassGPerMol } from '../alcoholometry/index.ts';
import {
  type BookEntries,
  type BookedLiquid,
  booksOfRun,
  type PooledLiquid,
  type RunBooks,
  type SimpleDistillation,
  simpleDistillation,
} from '../bookkeeping/index.ts';
import {
  type RunByVolume,
  runByVolume,
  verdictsByVolume,
  volumeReadings,
} from '../by-volume/index.ts';
import { equilibriumModelVersion } from '../equilibrium/index.ts';
import { analyseRun } from '../monitor/index.ts';
import { type Result, succeed } from '../result/index.ts';
import type { Mark, RunInput, RunSettings } from '../run/index.ts';
import { type Verdicts, verdictAlone } from '../snapshot/index.ts';
import { plateauOfRun, type RunPlateau } from './plateau-of-run.ts';
import { platesOfRun, type RunPlates } from './plates-of-run.ts';
import { pressureCourse } from './pressure-course.ts';
import { type ProcessedRow, processedRows } from './processed-rows.ts';

/** A run to be reported on, with what was measured after it. */
export interface RunToStudy {
  readonly runId: string;
  readonly name: string;
  /** When it began; empty for a file that does not say. */
  readonly startedAtIso: string;
  readonly rehearsal: boolean;
  /** Taken in from a file of another logger. */
  readonly imported?: boolean | undefined;
  /** Still being recorded when it was read: its end is only how far it had got. */
  readonly underWay?: boolean | undefined;
  /** What was put right after the run, in sentences. */
  readonly corrections?: readonly string[] | undefined;
  /** What is missing from its record and why, in sentences. */
  readonly leftOut?: readonly string[] | undefined;
  readonly settings: RunSettings;
  /** Of the program that tells of the run, and of the monitor that judged it for that. */
  readonly appVersion: string;
  readonly modelVersion: string;
  /** By which it was judged while it was recorded. */
  readonly recordedModelVersion?: string | undefined;
  readonly inputs: readonly RunInput[];
  readonly endS: number;
  /** Measurements made after the run, as marks at its end. */
  readonly lateMarks?: readonly Mark[] | undefined;
  readonly entries?: BookEntries | undefined;
}

/** Everything that reports, worksheets, figures and exercises say of a run. */
export interface RunStudy extends Omit<RunToStudy, 'entries'> {
  readonly equilibriumModel: string;
  readonly verdicts: Verdicts;
  /** In a sentence why nothing judged it; null where something did. */
  readonly unjudged: string | null;
  /** Whether it had a main fraction; null where nothing judged it. */
  readonly mainFraction: 'yes' | 'no' | null;
  readonly rows: readonly ProcessedRow[];
  readonly plateau: RunPlateau | null;
  /** What is told of equilibrium without a time is told at this air pressure [kPa]: the plateau's, or as it was known at the end. */
  readonly pressureKPa: number;
  readonly books: RunBooks;
  readonly plates: RunPlates | null;
  /** As it stands in the books. */
  readonly product: PooledLiquid | null;
  /** What a still without a column would have given; null as well where a cut was not measured, since nobody knows of how much distillate. */
  readonly simple: SimpleDistillation | null;
  /** Against the volume of distillate; null where no volume is known. */
  readonly byVolume: RunByVolume | null;
}

/**
 * Works a run through once: the monitor's verdicts, rows, plateau, books, plates and the comparison with a simple
 * distillation. Pure, so a report made twice says the same twice.
 *
 * @param run settings, inputs in order of time, endS [s] ≥ 0, entries made after the run
 * @param judged the monitor's verdicts on this run, where the caller already has them, or in a sentence why it failed
 *
 * Source: see the functions named.
 * @example
 * const run = { runId: 'a', name: 'Pear', startedAtIso: '', rehearsal: true, settings: defaultRunSettings, appVersion: '0', modelVersion: '1', inputs: [], endS: 60 };
 * studyRun(run).verdicts.verdict.mainFraction // => false
 * studyRun(run).plateau // => null
 */
export function studyRun(
  { entries, ...run }: RunToStudy,
  judged: Result<Verdicts, string> = succeed(analyseRun(run.settings, run.inputs, run.endS)),
): RunStudy {
  const { settings, inputs, endS } = run;
  const found = judged.ok
    ? judged.value
    : verdictAlone({ mainFraction: false, because: judged.error });
  const isTable = volumeReadings(inputs) !== null;
  const rows = isTable ? [] : processedRows({ settings, inputs, verdicts: found, endS });
  const plateau = plateauOfRun(run, rows);
  const books = booksOfRun({
    settings,
    inputs: [...inputs, ...(run.lateMarks ?? [])],
    verdicts: found,
    endS,
    entries,
  });
  const byVolume = runByVolume({
    settings,
    inputs,
    rows,
    refluxRatio: entries?.refluxRatio ?? null,
    distillate: books.distillate,
  });
  const pressureKPa =
    plateau?.pressureKPa ?? pressureCourse(settings.pressure, inputs)(endS).pressureKPa;
  const { product } = books;
  // A table without times is judged by its volumes, whatever the monitor made of it.
  const isByVolume = isTable && byVolume !== null;
  const verdicts = isByVolume ? verdictsByVolume(byVolume) : found;
  const unjudged = isByVolume || judged.ok ? null : judged.error;
  return {
    ...run,
    equilibriumModel: equilibriumModelVersion,
    verdicts,
    unjudged,
    mainFraction: unjudged !== null ? null : verdicts.verdict.mainFraction ? 'yes' : 'no',
    rows,
    plateau,
    pressureKPa,
    books,
    plates: platesOfRun(books, plateau, rows),
    product,
    byVolume,
    simple:
      product === null || books.unmeasuredCuts.length > 0
        ? null
        : simpleBeside(books.charge, product, pressureKPa),
  };
}

/** The simple distillation of the same charge to as many moles; null where it can't be compared. */
function simpleBeside(
  charge: BookedLiquid,
  product: PooledLiquid,
  pressureKPa: number,
): SimpleDistillation | null {
  const chargeMol = molOf(charge);
  const distillateMol = molOf(product);
  const isComparable =
    charge.ethanolMoleFraction > 1e-3 &&
    charge.ethanolMoleFraction < 0.8 &&
    distillateMol > 1e-6 &&
    distillateMol < 0.9 * chargeMol;
  if (!isComparable) return null;
  return simpleDistillation({
    chargeMol,
    potMoleFraction: charge.ethanolMoleFraction,
    distillateMol,
    pressureKPa,
  });
}

function molOf({ massG, ethanolG }: Pick<PooledLiquid, 'massG' | 'ethanolG'>): number {
  return (
    ethanolG.value / ethanolMolarMassGPerMol +
    (massG.value - ethanolG.value) / waterMolarMassGPerMol
  );
}
