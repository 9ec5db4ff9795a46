import { type CautionId, cautions, type KnownCaution } from './cautions.ts';

const byId = new Map(cautions.map((caution) => [caution.id, caution]));

/**
 * The caution of an id.
 *
 * @example
 * cautionOf('dryness').act // => "Never boil the pot dry."
 */
export function cautionOf(id: CautionId): KnownCaution {
  const caution = byId.get(id);
  if (caution === undefined) throw new Error(`There is no caution ${id}.`);
  return caution;
}
