import { cautionsAt } from '../cautions/index.ts';
import { type MarkBody, markBodySchema } from '../run/index.ts';
import { worded } from '../wording/index.ts';

/** Marks that may be made after a run: a sample is burned only once every caution of it has been confirmed. */
export const lateMarkSchema = markBodySchema.refine(
  isEveryConditionConfirmed,
  worded('Nothing is lit before every condition is confirmed. Confirm each of them first.'),
);

function isEveryConditionConfirmed(mark: MarkBody): boolean {
  if (mark.type !== 'proof-burned') return true;
  return cautionsAt('proof').every(({ id }) => mark.confirmed.includes(id));
}
