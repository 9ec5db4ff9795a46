import { strengthFromGravities } from './balling.ts';
import { dryGravity } from './sugar-to-ethanol.ts';

/** Gravity that each °P of extract adds. Source: slope of the cubic in `platoFromGravity` at gravity 1. */
const gravityPerPlato = 0.003876;

/** `strengthFromGravities` is this straight to 0.3 % below gravity 1.13: slope for each gravity lost [% vol]. */
const at = (original: number) => strengthFromGravities(original, 1.005) / (original - 1.005);
const atLow = at(1.03);
const perOriginal = (at(1.13) - atLow) / 0.1;

/** Strength for each unit of gravity lost [% vol], from an original gravity 1 … 1.2. */
export function abvPerGravity(original: number): number {
  return atLow + perOriginal * (original - 1.03);
}

/** Dry gravities at every % vol to 30, for quick interpolation. */
const dryGravities = Array.from({ length: 31 }, (_, abv) => dryGravity(abv));

function quickDryGravity(abv: number): number {
  const index = Math.min(29, Math.max(0, Math.floor(abv)));
  const below = dryGravities[index] as number;
  const above = dryGravities[index + 1] as number;
  return below + (abv - index) * (above - below);
}

/**
 * Gravity at which a ferment ends: all its sugar used but `extractLeft`, or as strong as its yeast bears.
 *
 * @param original gravity before [1], 1 … 1.2; extractLeft extract that yeast leaves [°P], 0 … 10; tolerance [% vol]
 */
export function endGravity(original: number, extractLeft: number, tolerance: number): number {
  const perGravity = abvPerGravity(original);
  let end = 0.995;
  for (let step = 0; step < 4; step += 1) {
    const abv = perGravity * (original - end);
    end = quickDryGravity(abv) + gravityPerPlato * extractLeft;
  }
  const borne = original - tolerance / perGravity;
  return Math.min(original - 0.002, Math.max(end, borne));
}
