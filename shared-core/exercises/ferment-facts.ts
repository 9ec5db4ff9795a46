import type { FermentStudy } from '../study/index.ts';
import { shown } from './exercise.ts';

/** A gravity as the sheet prints it. */
export interface PrintedGravity {
  readonly day: number;
  readonly gravity: number;
}

/** A smaller fall says nothing that a hydrometer's scale would not hide. */
const leastFall = 0.005;

/** The gravities at 20 °C in their order, to the digits of a hydrometer; days since the beginning. */
export function printedGravities({ moments }: FermentStudy): readonly PrintedGravity[] {
  return moments.flatMap(({ timeH, gravityAt20C }) =>
    gravityAt20C === null ? [] : [{ day: shown(timeH / 24, 1), gravity: shown(gravityAt20C, 3) }],
  );
}

/** The first and the last gravity, where they tell of a fall and the judge believes the first. */
export function fallen(
  study: FermentStudy,
): { readonly first: PrintedGravity; readonly last: PrintedGravity } | null {
  const gravities = printedGravities(study);
  const [first, last] = [gravities[0], gravities.at(-1)];
  const { originalGravity } = study.verdict;
  if (first === undefined || last === undefined || originalGravity === null) return null;
  const isBelieved = Math.abs(first.gravity - originalGravity.value) < leastFall;
  return isBelieved && first.gravity - last.gravity >= leastFall ? { first, last } : null;
}

/** The vessel's mass, first and last. */
export function massLost({ moments }: FermentStudy) {
  const masses = moments.flatMap(({ read: { massG } }) => (massG === null ? [] : [massG]));
  const [first, last] = [masses[0], masses.at(-1)];
  if (first === undefined || last === undefined) return null;
  const [firstG, lastG] = [shown(first, 1), shown(last, 1)];
  const lostG = shown(firstG - lastG, 1);
  return lostG > 1 ? { firstG, lastG, lostG } : null;
}
