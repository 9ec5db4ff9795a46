import { strengthFromMoleFraction } from '../alcoholometry/index.ts';
import { headVapourTable } from '../equilibrium/index.ts';
import { pressureAfter } from '../monitor/index.ts';
import { scaleDoubts } from '../probe/index.ts';
import { indexAtTime, pointAt, type Series } from '../series/index.ts';
import type { Booking } from './collected-course.ts';
import type { FollowedRun } from './followed-run.ts';
import { type RecoveryPoint, recoverySoFar, type StrengthMoment } from './recovery-so-far.ts';

/** The curve is followed in steps of half a minute. */
const stepS = 30;
/** How far the dew point moves with pressure [K/kPa]; slope of the azeotrope near 100 kPa. */
const kelvinPerKPa = 0.27;

/** Purity against recovery from the arrival of the vapour to a time, from the head's readings and the bookings. */
export function recoveryUpTo(
  view: FollowedRun,
  bookings: readonly Booking[],
  pressureKPa: number,
  timeS: number,
): readonly RecoveryPoint[] {
  const head = view.tracks.head?.series;
  const first = bookings[0];
  const last = bookings[bookings.length - 1];
  if (head === undefined || first === undefined || last === undefined) return [];
  const endS = Math.min(timeS, last.timeS);
  const { charge, probe } = view.settings;
  const { temperatureUncertaintyK, pressureUncertaintyKPa } = scaleDoubts({
    probe,
    pressure: pressureAfter(view.settings.pressure, view.marks),
  });
  const reachK = 2 * Math.hypot(temperatureUncertaintyK, kelvinPerKPa * pressureUncertaintyKPa);
  const readsHighK = view.snapshot?.plateau.probeReadsHighK ?? 0;
  const strengthAt = strengthTable(pressureKPa);
  const strengths: StrengthMoment[] = [];
  for (let atS = first.timeS; ; atS = Math.min(atS + stepS, endS)) {
    const readC = meanAround(head, atS);
    if (readC !== null) {
      const headC = Math.min(145, readC - readsHighK);
      strengths.push({
        timeS: atS,
        strengthAbv: {
          value: strengthAt(headC),
          low: strengthAt(headC + reachK),
          high: strengthAt(headC - reachK),
        },
      });
    }
    if (atS >= endS) break;
  }
  return recoverySoFar(bookings, strengths, charge);
}

function strengthTable(pressureKPa: number): (temperatureC: number) => number {
  const table = headVapourTable(pressureKPa);
  return (temperatureC) => strengthFromMoleFraction(table.ethanolMoleFractionAt(temperatureC));
}

/** Mean of the readings within half a step; null in a gap. */
function meanAround(series: Series, timeS: number): number | null {
  const from = indexAtTime(series, timeS - stepS / 2);
  const to = indexAtTime(series, timeS + stepS / 2);
  if (to <= from) return null;
  const stride = Math.max(1, Math.floor((to - from) / 16));
  let sum = 0;
  let count = 0;
  for (let index = from; index < to; index += stride) {
    sum += pointAt(series, index)?.value ?? 0;
    count += 1;
  }
  return sum / count;
}
