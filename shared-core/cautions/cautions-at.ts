import type { CautionPlace } from './caution.ts';
import { cautions, type KnownCaution } from './cautions.ts';

/**
 * The cautions that a place says, in the order of the list.
 *
 * @example
 * cautionsAt('pack').map(({ id }) => id) // => ["no-safety-device", "drink"]
 */
export function cautionsAt(place: CautionPlace): readonly KnownCaution[] {
  return cautions.filter(({ places }) => places.includes(place));
}
