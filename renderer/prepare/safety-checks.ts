import { cautionsAt, type KnownCaution, say } from '#shared-core';

/** One look at one place of the bench, confirmed by one press: what can be seen there at a glance, and nothing else. */
export interface SafetyLook {
  readonly title: string;
  readonly checks: readonly KnownCaution[];
}

/** Where each caution of Prepare is looked for. */
const places: readonly { readonly title: string; readonly ids: readonly KnownCaution['id'][] }[] = [
  { title: say('The rules here'), ids: ['permission'] },
  { title: say('The people'), ids: ['attended', 'protection'] },
  { title: say('The room'), ids: ['ignition', 'fire'] },
  { title: say('The pot'), ids: ['fill', 'boiling-stones'] },
  { title: say('Glass, hoses and water'), ids: ['open-path', 'clips', 'cooling-water'] },
  { title: say('The heat'), ids: ['drop-heat'] },
  { title: say('Receiver, computer and head'), ids: ['receiver-away', 'bulb', 'mercury'] },
];

/** What must be true at the bench before heat: the cautions of this place, by where one looks. */
export const safetyLooks: readonly SafetyLook[] = places.map(({ title, ids }) => ({
  title,
  checks: cautionsAt('prepare').filter(({ id }) => ids.includes(id)),
}));

/** Looks at which something is not confirmed yet. */
export function looksLeft(confirms: readonly { readonly check: string }[]): readonly SafetyLook[] {
  return safetyLooks.filter(
    ({ checks }) => !checks.every(({ id }) => confirms.some(({ check }) => check === id)),
  );
}
