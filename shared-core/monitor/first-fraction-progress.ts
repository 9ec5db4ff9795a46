import type { RunSettings } from '../run/index.ts';
import type { MarksLedger } from './marks-ledger.ts';
import type { FirstFractionProgress } from './monitor-facts.ts';

/** Drops of strong distillate in a millilitre; common practice, no source. */
export const dropsPerMl = 40;

/**
 * How far the convention that ends the first fraction is met. Booked amounts count; where nothing is
 * booked, the amount is estimated from the time the head has held, so the stage cannot hang.
 *
 * @param heldForS time the head has held with vapour at the bulb [s]
 * @param rateMlPerS expected distillate flow [mL/s]
 */
export function firstFractionProgress(
  convention: RunSettings['firstFraction'],
  marks: MarksLedger,
  heldForS: number,
  rateMlPerS: number,
): FirstFractionProgress {
  const held = heldForS > 0;
  if (convention.kind === 'minutes') {
    const done = heldForS / 60;
    const wanted = convention.minutes;
    return { over: held && done >= wanted, done, wanted, unit: 'min', estimated: false };
  }
  const perMl = convention.kind === 'drops' ? dropsPerMl : 1;
  const wanted = convention.kind === 'drops' ? convention.count : convention.volumeMl;
  const unit = convention.kind === 'drops' ? 'drops' : 'mL';
  const bookedMl = marks.collectedMl();
  const booked =
    convention.kind === 'drops' && marks.dropsCounted() > 0
      ? marks.dropsCounted()
      : bookedMl === null
        ? null
        : bookedMl * perMl;
  if (booked !== null && booked >= wanted) {
    return { over: held, done: booked, wanted, unit, estimated: false };
  }
  const done = Math.max(booked ?? 0, heldForS * rateMlPerS * perMl);
  return { over: held && done >= wanted, done, wanted, unit, estimated: true };
}
