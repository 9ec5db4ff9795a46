/** What came over: how much of it by when, and how strong it is on average. */
export {
  type DistillateBasis,
  type DistillateCourse,
  type DistillatePoint,
  distillateAt,
  distillateCourse,
  pointsOfGains,
} from './distillate-course.ts';
export { meanStrength, type StrengthPoint } from './mean-strength.ts';
export { strengthToldAt } from './strength-told.ts';
export { longestFallS, vapourLeftS } from './vapour-left.ts';
