import type { RunSettings } from '../../run/index.ts';
import type { FirstFractionProgress } from '../monitor-facts.ts';

/** What was booked or weighed of the distillate so far. */
export interface CollectedSoFar {
  readonly drops: number;
  readonly collectedMl: number | null;
}

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
  { drops, collectedMl }: CollectedSoFar,
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
  const fromVolume = collectedMl === null ? null : collectedMl * perMl;
  const booked = convention.kind === 'drops' && drops > 0 ? drops : fromVolume;
  if (booked !== null && booked >= wanted) {
    return { over: held, done: booked, wanted, unit, estimated: false };
  }
  const done = Math.max(booked ?? 0, heldForS * rateMlPerS * perMl);
  return { over: held && done >= wanted, done, wanted, unit, estimated: true };
}
