import { type DistillateBasis, type DistillateCourse, meanStrength } from '../distillate/index.ts';
import { heardPressure, pressureAfter } from '../monitor/index.ts';
import type { RunInput, RunSettings } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { balanceDoubt } from './balance-doubt.ts';
import { batchByVolume, type ExpectedPoint } from './batch-by-volume.ts';
import { courseOverTime, type HeadAtTime } from './course-over-time.ts';
import { expectedAt } from './expected-at.ts';
import { type VolumePoint, volumeCourse } from './volume-course.ts';
import { volumeReadings } from './volume-reading.ts';
import { type VolumeVerdict, volumeVerdict } from './volume-verdict.ts';

/** A point of the course, and what theory expects at the same volume; null where it has none. */
export interface PointBesideTheory extends VolumePoint {
  readonly simple: ExpectedPoint | null;
  readonly column: ExpectedPoint | null;
}

/** A run against the volume of distillate, with what theory expects of its charge. */
export interface RunByVolume {
  readonly basis: 'table' | DistillateBasis;
  /** The air pressure that all of it is reckoned by [kPa], as it was known at the end. */
  readonly pressureKPa: number;
  readonly course: readonly PointBesideTheory[];
  readonly verdict: VolumeVerdict;
  /** All that came over, and how strong it is on average [% vol at 20 °C]; null where no strength is known. */
  readonly collected: { readonly volumeMl: number; readonly abv: Estimate } | null;
  /** A simple still of the same charge; null where the charge or the volume forbids it. */
  readonly rayleigh: readonly ExpectedPoint[] | null;
  /** A column at the plates set and the reflux entered; null where either is unknown or there is no column. */
  readonly rectified: readonly ExpectedPoint[] | null;
  /** Where charge, volumes and temperatures can't all be right; null where they may. */
  readonly doubt: string | null;
  /** Head temperature above what Rayleigh expects [K], mean and greatest over the course. */
  readonly aboveRayleighK: { readonly mean: number; readonly greatest: number } | null;
}

export interface RunAgainstVolume {
  readonly settings: Pick<
    RunSettings,
    'charge' | 'pressure' | 'probe' | 'rig' | 'leastStrengthAbv' | 'firstFraction'
  >;
  readonly inputs: readonly RunInput[];
  /** The head averaged and calibrated through the run, from `processedRows`. */
  readonly rows: readonly HeadAtTime[];
  /** Entered at the bench. */
  readonly refluxRatio: number | null;
  /** What came over by when, from the books of the run. */
  readonly distillate: DistillateCourse | null;
}

/**
 * A run against the volume of distillate: its own volumes where the table has them, else those of the receiver, of the marks or of
 * a stated drip rate; beside it the courses that a simple still and the column described would give.
 *
 * @param run settings, inputs, rows of `processedRows`, reflux ratio [mol/mol] where entered, distillate of `booksOfRun`
 * @returns null where no volume is known
 *
 * Source: see `volumeCourse` and `batchByVolume`.
 * @example
 * runByVolume({ settings: defaultRunSettings, inputs: [], rows: [], refluxRatio: null, distillate: null }) // => null
 */
export function runByVolume(given: RunAgainstVolume): RunByVolume | null {
  const run = { ...given, settings: { ...given.settings, pressure: pressureKnown(given) } };
  const { settings, inputs, rows, distillate } = run;
  const table = volumeReadings(inputs);
  const found =
    table === null ? courseOverTime(rows, distillate, settings) : volumeCourse(table, settings);
  const basis = table === null ? distillate?.basis : 'table';
  if (found === null || basis == null) return null;
  const { points: course, strengths, allMl } = found;
  const upToMl = course.at(-1)?.volumeMl ?? 0;
  const rayleigh = expected(run, upToMl, null);
  const { plates } = settings.rig;
  const { refluxRatio } = run;
  const rectified =
    plates === null || plates === 0 || refluxRatio === null
      ? null
      : expected(run, upToMl, { plates, refluxRatio });
  const besideTheory = course.map((point) => ({
    ...point,
    simple: expectedAt(rayleigh, point.volumeMl),
    column: expectedAt(rectified, point.volumeMl),
  }));
  return {
    basis,
    pressureKPa: settings.pressure.pressureKPa,
    course: besideTheory,
    verdict: volumeVerdict(found, settings),
    collected: allMl > 0 ? { volumeMl: allMl, abv: meanStrength(strengths, 0, allMl) } : null,
    doubt: balanceDoubt(course, settings),
    rayleigh,
    rectified,
    aboveRayleighK: aboveSimple(besideTheory),
  };
}

/** As the monitor comes to know it: by what was set, what a barometer on the line showed, and what people read. */
function pressureKnown({ settings, inputs }: RunAgainstVolume): RunSettings['pressure'] {
  return pressureAfter(heardPressure(settings.pressure, inputs), inputs);
}

function expected(
  { settings: { charge, pressure } }: RunAgainstVolume,
  upToMl: number,
  column: { readonly plates: number; readonly refluxRatio: number } | null,
): readonly ExpectedPoint[] | null {
  const { pressureKPa } = pressure;
  const isPossible =
    upToMl > 0 &&
    upToMl < charge.volumeMl &&
    charge.strengthAbv >= 0.1 &&
    charge.strengthAbv <= 90 &&
    pressureKPa >= 50 &&
    pressureKPa <= 110;
  if (!isPossible) return null;
  const { volumeMl: chargeMl, strengthAbv: chargeAbv } = charge;
  return batchByVolume({ chargeMl, chargeAbv, pressureKPa, upToMl, column });
}

function aboveSimple(course: readonly PointBesideTheory[]): RunByVolume['aboveRayleighK'] {
  const differences = course.flatMap(({ headC, vapourAbv, simple }) =>
    vapourAbv === null || simple === null ? [] : [headC - simple.headC],
  );
  if (differences.length === 0) return null;
  const mean = differences.reduce((sum, one) => sum + one, 0) / differences.length;
  const greatest = differences.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most));
  return { mean, greatest };
}
