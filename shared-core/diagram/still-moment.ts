import { moleFractionFromMassFraction } from '../alcoholometry/index.ts';
import { headVapour } from '../equilibrium/index.ts';
import { pressureAfter } from '../monitor/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import type { RunSettings } from '../run/index.ts';
import { indexAtTime, pointAt, type Series } from '../series/index.ts';
import type { Stage } from '../stages/index.ts';
import type { Estimate } from '../uncertainty/index.ts';
import { type Booking, collectedCourse, dripRateAt } from './collected-course.ts';
import type { FollowedRun } from './followed-run.ts';
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
  /** Null while no vapour bathes the head. */
  readonly vapour: HeadVapourPoint | null;
  readonly pot: PotEstimate | null;
  readonly bookings: readonly Booking[];
  readonly recovery: readonly RecoveryPoint[];
  readonly dripRateMlPerMin: Estimate | null;
  readonly reflux: RefluxEstimate | null;
}

/** A reading older than this says nothing of the moment [s]. */
const staleS = 20;
/** This near to the snapshot, the moment is the monitor's own [s]. */
const nowReachS = 2;

/**
 * What is known of pot, column and head at a time of a run: the monitor's own word where it is the present, else what follows
 * from the readings and bookings nearby.
 *
 * @param view the run as far as it was followed
 * @param timeS since the run began [s], not after the last reading
 *
 * @example
 * const emptyRun = { settings: defaultRunSettings, tracks: {}, marks: [], snapshot: null, stages: [] };
 * stillMomentAt(emptyRun, 60).stage // => "warm-up"
 * stillMomentAt(emptyRun, 60).vapour // => null
 */
export function stillMomentAt(view: FollowedRun, timeS: number): StillMoment {
  const { settings, snapshot } = view;
  const isPresent = snapshot !== null && Math.abs(timeS - snapshot.timeS) <= nowReachS;
  const pressureKPa = snapshot?.plateau.pressureKPa ?? settings.pressure.pressureKPa;
  const pressure = pressureAfter(
    settings.pressure,
    view.marks.filter((mark) => mark.timeS <= timeS),
  );
  const stage = stageAt(view, timeS);
  const readHeadC = valueAt(view.tracks.head?.series ?? null, timeS);
  const headC = headEstimate(view, isPresent, readHeadC);
  const hasReceded = isPresent && snapshot.stage.condition === 'vapour-receded';
  const isUnsettled = isPresent && snapshot.vapour?.kind === 'unsettled';
  const isBathed = stage !== 'warm-up' && stage !== 'cool-down' && !hasReceded && !isUnsettled;
  const vapour = isBathed
    ? ((isPresent ? presentVapour(view) : null) ??
      vapourFromReading(view, headC, pressureKPa, pressure))
    : null;
  const arrivedS = view.stages.find((span) => span.stage === 'first-fraction')?.fromS ?? null;
  const bookings = collectedCourse(
    view.marks.filter((mark) => mark.timeS <= timeS),
    arrivedS,
  );
  const recovery = recoveryUpTo(view, bookings, pressureKPa, timeS);
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

function presentVapour({ snapshot }: FollowedRun): HeadVapourPoint | null {
  const vapour = snapshot?.vapour ?? null;
  if (vapour?.alcoholByVolume == null || vapour.ethanolMassPercent == null) return null;
  const { value, low, high } = vapour.ethanolMassPercent;
  const moleFraction = (massPercent: number) =>
    moleFractionFromMassFraction(Math.min(1, Math.max(0, massPercent / 100)));
  return {
    strengthAbv: vapour.alcoholByVolume,
    ethanolMoleFraction: {
      value: moleFraction(value),
      low: moleFraction(low),
      high: moleFraction(high),
    },
  };
}

function vapourFromReading(
  { settings, snapshot }: FollowedRun,
  headC: Estimate | null,
  pressureKPa: number,
  pressure: RunSettings['pressure'],
): HeadVapourPoint | null {
  if (headC === null) return null;
  // The same belief about the probe that the band and the present strength stand on.
  const vapourC = headC.value - (snapshot?.plateau.probeReadsHighK ?? 0);
  if (vapourC < -50 || vapourC > 150) return null;
  const vapour = headVapour({
    temperatureC: vapourC,
    pressureKPa,
    ...scaleDoubts({ probe: settings.probe, pressure }),
  });
  // Colder than any ethanol–water vapour: the bulb is not bathed, whatever the stage.
  if (vapour.kind === 'below-azeotrope') return null;
  return {
    ethanolMoleFraction: vapour.ethanolMoleFraction,
    strengthAbv: vapour.alcoholByVolume,
  };
}
