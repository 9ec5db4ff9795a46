/** What came over: how much of it by when, and how strong it is on average. */
export {
  type DistillateBasis,
  type DistillateCourse,
  distillateAt,
  distillateCourse,
} from './distillate-course.ts';
export { meanStrength, type StrengthPoint } from './mean-strength.ts';
export { strengthBetween } from './place-among.ts';
