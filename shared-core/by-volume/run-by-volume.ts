import { isEmptyCut, type RunBooks } from '../bookkeeping/index.ts';
import { heardPressure, pressureAfter } from '../monitor/index.ts';
import { type RunInput, type RunSettings, standingMarks } from '../run/index.ts';
import { balanceDoubt } from './balance-doubt.ts';
import { batchByVolume, type ExpectedPoint } from './batch-by-volume.ts';
import { distillateOverTime, type RunToMeasure, type VolumeBasis } from './distillate-over-time.ts';
import { expectedAt } from './expected-at.ts';
import { type VolumePoint, volumeCourse } from './volume-course.ts';
import { type VolumeReading, volumeReadings } from './volume-reading.ts';
import { type VolumeVerdict, volumeVerdict } from './volume-verdict.ts';

/** A point of the course, and what theory expects at the same volume; null where it has none. */
export interface PointBesideTheory extends VolumePoint {
  readonly simple: ExpectedPoint | null;
  readonly column: ExpectedPoint | null;
}

/** A run against the volume of distillate, with what theory expects of its charge. */
export interface RunByVolume {
  readonly basis: VolumeBasis;
  /** The air pressure that all of it is reckoned by [kPa], as it was known at the end. */
  readonly pressureKPa: number;
  readonly course: readonly PointBesideTheory[];
  readonly verdict: VolumeVerdict;
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
  readonly endS: number;
  /** The head averaged and calibrated through the run, from `processedRows`. */
  readonly rows: readonly {
    readonly timeS: number;
    readonly headC: number;
    readonly vapourAbv: { readonly value: number } | null;
  }[];
  /** Entered at the bench. */
  readonly refluxRatio: number | null;
  readonly dripRateMlPerMin: number | null;
  /** As booked, with what was measured after the run. */
  readonly cuts: RunBooks['cuts'];
}

/** A bulb is within a hundredth of a step after so many of its t90. */
const lagsToFollow = 2;
/** More points than a figure is wide show nothing more. */
const mostPoints = 200;

/**
 * A run against the volume of distillate: its own volumes where the table has them, else those of the receiver, of the marks or of
 * a stated drip rate; beside it the courses that a simple still and the column described would give.
 *
 * @param run settings, inputs, rows of `processedRows`, reflux ratio [mol/mol] and drip rate [mL/min] where entered
 * @returns null where no volume is known
 *
 * Source: see `volumeCourse` and `batchByVolume`.
 * @example
 * runByVolume({ settings: defaultRunSettings, inputs: [], endS: 60, rows: [], refluxRatio: null, dripRateMlPerMin: null, cuts: [] }) // => null
 */
export function runByVolume(given: RunAgainstVolume): RunByVolume | null {
  const run = { ...given, settings: { ...given.settings, pressure: pressureKnown(given) } };
  const { settings, inputs } = run;
  const table = volumeReadings(inputs);
  const measured = table === null ? overTime(run) : { basis: 'table' as const, readings: table };
  if (measured === null) return null;
  const course = volumeCourse(measured.readings, settings);
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
    basis: measured.basis,
    pressureKPa: settings.pressure.pressureKPa,
    course: besideTheory,
    verdict: volumeVerdict(course, settings),
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

/** Without one of them nobody knows how much the later ones add to. */
function volumesOfCuts(cuts: RunBooks['cuts']): RunToMeasure['cuts'] {
  const measured = cuts.flatMap((cut) => {
    if (cut.booked === null && !isEmptyCut(cut)) return [];
    return [{ toS: cut.toS, volumeMl: cut.booked?.volumeMl.value ?? 0 }];
  });
  return measured.length === cuts.length ? measured : [];
}

/** The head at equal steps of volume, of a run whose volumes are known over time. */
function overTime({
  settings,
  inputs,
  endS,
  rows,
  dripRateMlPerMin,
  cuts,
}: RunAgainstVolume): { readonly basis: VolumeBasis; readonly readings: VolumeReading[] } | null {
  const bathed = rows.filter(({ vapourAbv }) => vapourAbv !== null);
  const [first] = bathed;
  if (first === undefined) return null;
  const offS = standingMarks(inputs).findLast(({ mark }) => mark.type === 'heat-off')?.timeS;
  const untilS = Math.min(offS ?? endS, bathed.at(-1)?.timeS ?? endS);
  const strengthAt = (timeS: number) =>
    bathed.findLast((row) => row.timeS <= timeS)?.vapourAbv?.value ?? null;
  const known = distillateOverTime({
    inputs,
    arrivedS: first.timeS,
    untilS,
    dripRateMlPerMin,
    cuts: volumesOfCuts(cuts),
    strengthAt,
  });
  if (known === null) return null;
  const { points, basis } = known;
  // While the bulb follows the front it reads cooler than the vapour, as if stronger than any.
  const followedS = first.timeS + lagsToFollow * settings.probe.lagT90S;
  const heads = bathed.filter(({ timeS }) => timeS >= followedS && timeS <= untilS);
  const everyNth = Math.max(1, Math.ceil(heads.length / mostPoints));
  let at = 0;
  const readings = heads.flatMap(({ timeS, headC }, index): VolumeReading[] => {
    if (index % everyNth !== 0 && index !== heads.length - 1) return [];
    while ((points[at + 1]?.timeS ?? Number.POSITIVE_INFINITY) <= timeS) at += 1;
    const [from, to] = [points[at], points[at + 1]];
    // Beyond the last volume that anybody read nothing is made up.
    if (from === undefined || (to === undefined && timeS > from.timeS)) return [];
    const share = to === undefined ? 0 : (timeS - from.timeS) / (to.timeS - from.timeS);
    const volumeMl = from.volumeMl + share * ((to?.volumeMl ?? 0) - from.volumeMl);
    // The rows are calibrated already.
    return [{ volumeMl, headC: (headC - settings.probe.offsetK) / settings.probe.gain }];
  });
  return readings.length < 3 ? null : { basis, readings };
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
