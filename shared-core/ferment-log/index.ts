/** The log of a ferment as a person writes it down: what was read when, as it stood on the instruments. */
export { checkMoment } from './check-moment.ts';
export {
  type FermentRead,
  fermentReadSchema,
} from './ferment-read.ts';
export {
  type FermentEntry,
  fermentIdSchema,
  fermentReasonSchema,
  type KeptFerment,
  keptFermentSchema,
  type StatedFerment,
  statedFermentSchema,
} from './kept-ferment.ts';
