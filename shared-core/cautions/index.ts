/** Cautions and when each is shown. */

export { type Caution, type CautionPlace, cautionPlaces, commonPractice } from './caution.ts';
export { cautionOf } from './caution-of.ts';
export { cautionWords } from './caution-words.ts';
export { type CautionId, cautionGroups, cautions, type KnownCaution } from './cautions.ts';
export { cautionsAt } from './cautions-at.ts';
