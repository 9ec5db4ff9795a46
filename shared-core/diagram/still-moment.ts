import { longestFallS, strengthToldAt, vapourLeftS } from '../distillate/index.ts';
import { indexAtTime, pointAt, type Series } from '../series/index.ts';
import type { Stage } from '../stages/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type Booking, collectedCourse, dripRateAt } from './collected-course.ts';
import type { FollowedRun } from './followed-run.ts';
import { moleFractionEstimate } from './mole-fraction-estimate.ts';
import { type PotEstimate, potEstimate } from './pot-estimate.ts';
import { potStrengthFromBalance } from './pot-from-balance.ts';
import { presentReflux, type RefluxEstimate } from './present-reflux.ts';
import type { RecoveryPoint } from './recovery-so-far.ts';
import { recoveryUpTo } from './recovery-up-to.ts';

/** The vapour at the head as a point of the diagrams. */
export interface HeadVapourPoint {
  readonly ethanolMoleFraction: Estimate;
  readonly strengthAbv: Estimate;
}

/** What is known of pot, column and head at one moment of a run. */
export interface StillMoment {
  readonly timeS: number;
  readonly stage: Stage;
  readonly pressureKPa: number;
  /** With its expanded uncertainty; null without a reading nearby. */
  readonly headC: Estimate | null;
  /** As the monitor told it; null where it told no strength. */
  readonly vapour: HeadVapourPoint | null;
  readonly pot: PotEstimate | null;
  readonly bookings: readonly Booking[];
  readonly recovery: readonly RecoveryPoint[];
  readonly dripRateMlPerMin: Estimate | null;
  readonly reflux: RefluxEstimate | null;
}

/** A reading older than this says nothing of the moment [s]. */
const staleS = 20;
/** A moment is a second long: the one in which the monitor told a strength has just that. */
const momentS = 1;
/** This near to the snapshot, the moment is the monitor's own [s]. */
const nowReachS = 2;

/**
 * What is known of pot, column and head at a time of a run: the monitor's own word for head and pot where it is the present, else what follows from
 * the readings and bookings nearby. The strength of the vapour is the monitor's own at any time, see {@link strengthToldAt}: it has learned of
 * probe and air pressure what a temperature alone does not say.
 *
 * @param view the run as far as it was followed
 * @param timeS since the run began [s], not after the last reading
 *
 * @example
 * const emptyRun = { settings: defaultRunSettings, tracks: {}, marks: [], snapshot: null, stages: [], estimates: [] };
 * stillMomentAt(emptyRun, 60).stage // => "warm-up"
 * stillMomentAt(emptyRun, 60).vapour // => null
 */
export function stillMomentAt(view: FollowedRun, timeS: number): StillMoment {
  const { settings, snapshot } = view;
  const isPresent = snapshot !== null && Math.abs(timeS - snapshot.timeS) <= nowReachS;
  const pressureKPa = snapshot?.plateau.pressureKPa ?? settings.pressure.pressureKPa;
  const stage = stageAt(view, timeS);
  const readHeadC = valueAt(view.tracks.head?.series ?? null, timeS);
  const headC = headEstimate(view, isPresent, readHeadC);
  const isInVapour =
    stage !== 'warm-up' && stage !== 'cool-down' && timeS <= vapourLeftInViewS(view);
  const told = isInVapour ? strengthAtMoment(view, isPresent, timeS) : null;
  const vapour = told && { strengthAbv: told, ethanolMoleFraction: moleFractionEstimate(told) };
  const arrivedS = view.stages.find((span) => span.stage === 'first-fraction')?.fromS ?? null;
  const bookings = collectedCourse(
    view.marks.filter((mark) => mark.timeS <= timeS),
    arrivedS,
  );
  const recovery = recoveryUpTo(toldUntilNow(view), bookings, settings.charge);
  const collected = recovery[recovery.length - 1];
  const ownBalance = collected ? potStrengthFromBalance(settings.charge, collected) : null;
  const dripRateMlPerMin = stage === 'cool-down' ? null : dripRateAt(bookings, timeS);
  return {
    timeS,
    stage,
    pressureKPa,
    headC,
    vapour,
    pot: potEstimate({
      charge: settings.charge,
      pressureKPa,
      potTemperatureC: valueAt(view.tracks.pot?.series ?? null, timeS),
      probeStandardUncertaintyK: settings.probe.standardUncertaintyK,
      balanceAbv: (isPresent ? snapshot.forecast?.potStrengthAbv : null) ?? ownBalance,
      hasDistilled: arrivedS !== null && timeS >= arrivedS,
    }),
    bookings,
    recovery,
    dripRateMlPerMin,
    reflux: vapour
      ? presentReflux({
          rig: settings.rig,
          dripRateMlPerMin,
          headStrengthAbv: vapour.strengthAbv.value,
        })
      : null,
  };
}

function stageAt(view: FollowedRun, timeS: number): Stage {
  const span = view.stages.findLast(({ fromS }) => fromS <= timeS);
  return span?.stage ?? 'warm-up';
}

function vapourLeftInViewS({ tracks, stages }: FollowedRun): number {
  const last = stages.at(-1);
  const series = tracks.head?.series;
  if (last?.stage !== 'cool-down' || series === undefined) return Number.POSITIVE_INFINITY;
  const first = indexAtTime(series, last.fromS - longestFallS);
  const course = Array.from({ length: indexAtTime(series, last.fromS) - first }, (_, index) => {
    const point = pointAt(series, first + index);
    return { timeS: point?.timeS ?? 0, headC: point?.value ?? 0 };
  });
  return vapourLeftS(course, stages);
}

/** The last reading at or before a time; null when it is stale. */
function valueAt(series: Series | null, timeS: number): number | null {
  if (series === null) return null;
  const after = indexAtTime(series, timeS + 1e-9);
  const point = after === 0 ? null : pointAt(series, after - 1);
  return point !== null && timeS - point.timeS <= staleS ? point.value : null;
}

function headEstimate(
  view: FollowedRun,
  isPresent: boolean,
  readC: number | null,
): Estimate | null {
  const { snapshot, settings } = view;
  const head = isPresent ? (snapshot?.head ?? null) : null;
  if (head !== null) {
    const { temperatureC: value, expandedUncertaintyK: reach } = head;
    return { value, low: value - reach, high: value + reach };
  }
  if (readC === null) return null;
  const reach = 2 * settings.probe.standardUncertaintyK;
  return { value: readC, low: readC - reach, high: readC + reach };
}

/** Strengths are told minute by minute, and at the present; what lies between is never worked out anew from a temperature. */
function toldUntilNow({ estimates, snapshot }: FollowedRun): FollowedRun['estimates'] {
  const isNewer = snapshot !== null && snapshot.timeS > (estimates.at(-1)?.timeS ?? 0);
  if (!isNewer) return estimates;
  const headVapourAbv = snapshot.vapour?.alcoholByVolume ?? null;
  return [...estimates, { timeS: snapshot.timeS, headVapourAbv }];
}

function strengthAtMoment(view: FollowedRun, isPresent: boolean, timeS: number): Estimate | null {
  return isPresent
    ? (view.snapshot?.vapour?.alcoholByVolume ?? null)
    : strengthToldAt(toldUntilNow(view), timeS, momentS);
}
