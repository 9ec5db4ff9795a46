import { pointsOfGains } from '../distillate/index.ts';
import type { ChargeSetting } from '../run/index.ts';
import type { Verdicts } from '../snapshot/index.ts';
import type { Booking } from './collected-course.ts';
import { type RecoveryPoint, recoverySoFar } from './recovery-so-far.ts';

/** Purity against recovery from the arrival of the vapour to the last booking, by the strengths that the monitor told, weighed as in the books. */
export function recoveryUpTo(
  estimates: Verdicts['estimates'],
  bookings: readonly Booking[],
  charge: ChargeSetting,
): readonly RecoveryPoint[] {
  const strengths = estimates.flatMap(({ timeS, headVapourAbv }) =>
    headVapourAbv === null ? [] : [{ timeS, abv: headVapourAbv }],
  );
  const [first, last] = [bookings[0], bookings.at(-1)];
  if (strengths.length === 0 || first === undefined || last === undefined) return [];
  const gains = bookings.slice(1).map(({ timeS, volumeMl }, index) => {
    const before = bookings[index] ?? first;
    return { fromS: before.timeS, toS: timeS, gainedMl: volumeMl - before.volumeMl };
  });
  const run = { arrivedS: first.timeS, untilS: last.timeS, strengths, gone: [] };
  return recoverySoFar(pointsOfGains(gains, run), charge);
}
