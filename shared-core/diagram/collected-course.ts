import { createMarksLedger } from '../monitor/index.ts';
import { type Mark, standingMarks } from '../run/index.ts';
import type { Estimate } from '../uncertainty/index.ts';

/** Distillate booked up to a time. */
export interface Booking {
  readonly timeS: number;
  readonly volumeMl: number;
}

/** How far a measuring cylinder read at the bench may be off [mL]; common practice, no source. */
const cylinderReachMl = 0.5;

/**
 * What was booked of the distillate, one point a booking, from 0 mL at the arrival of the vapour on.
 * Withdrawn marks do not count; a receiver changed without a volume books nothing.
 *
 * @param marks in the order made
 * @param arrivedS when vapour reached the head [s]; null before, and then there is nothing to book
 * @returns bookings in time order, or none at all
 * @example
 * const mark = (markId, timeS, volumeMl) => ({ kind: 'mark', timeS, markId, mark: { type: 'volume-read', volumeMl } });
 * collectedCourse([mark(1, 900, 4), mark(2, 1500, 12)], 600).map(({ volumeMl }) => volumeMl) // => [0,4,12]
 * collectedCourse([], 600) // => []
 */
export function collectedCourse(
  marks: readonly Mark[],
  arrivedS: number | null,
): readonly Booking[] {
  if (arrivedS === null) return [];
  const ledger = createMarksLedger();
  const bookings: Booking[] = [];
  for (const mark of standingMarks(marks)) {
    ledger.add(mark);
    const volumeMl = ledger.collectedMl();
    const timeS = ledger.collectedS();
    if (volumeMl === null || timeS !== mark.timeS || timeS <= arrivedS) continue;
    const last = bookings[bookings.length - 1];
    bookings.push({ timeS, volumeMl: Math.max(volumeMl, last?.volumeMl ?? 0) });
  }
  return bookings.length === 0 ? [] : [{ timeS: arrivedS, volumeMl: 0 }, ...bookings];
}

/**
 * Distillate collected by a time, straight between bookings `V1 + (V2 − V1)(t − t1)/(t2 − t1)`; null outside them.
 *
 * @param timeS any number [s]
 * @example
 * collectedAtMl([{ timeS: 600, volumeMl: 0 }, { timeS: 1000, volumeMl: 8 }], 700) // => 2
 * collectedAtMl([{ timeS: 600, volumeMl: 0 }, { timeS: 1000, volumeMl: 8 }], 1001) // => null
 */
export function collectedAtMl(course: readonly Booking[], timeS: number): number | null {
  const next = course.findIndex((booking) => booking.timeS >= timeS);
  const after = course[next];
  if (after === undefined) return null;
  if (after.timeS === timeS) return after.volumeMl;
  const before = course[next - 1];
  if (before === undefined) return null;
  const share = (timeS - before.timeS) / (after.timeS - before.timeS);
  return before.volumeMl + share * (after.volumeMl - before.volumeMl);
}

/**
 * Drip rate at a time: the slope between the bookings round it, or of the last two. Its range allows for
 * 0.5 mL in reading a measuring cylinder, `± √2 · 0.5 mL/Δt`.
 *
 * @param timeS any number [s]
 * @returns rate [mL/min]; null with fewer than two bookings or nothing collected between them
 * @example
 * dripRateAt([{ timeS: 600, volumeMl: 0 }, { timeS: 1200, volumeMl: 9 }], 900).value // ≈ 0.9 ± 1e-9
 */
export function dripRateAt(course: readonly Booking[], timeS: number): Estimate | null {
  const next = course.findIndex((booking) => booking.timeS >= timeS);
  const end = next === -1 ? course.length - 1 : Math.max(1, next);
  const before = course[end - 1];
  const after = course[end];
  if (before === undefined || after === undefined) return null;
  const minutes = (after.timeS - before.timeS) / 60;
  const value = (after.volumeMl - before.volumeMl) / minutes;
  if (!(minutes > 0 && value > 0)) return null;
  const reach = (Math.SQRT2 * cylinderReachMl) / minutes;
  return { value, low: Math.max(value / 4, value - reach), high: value + reach };
}
