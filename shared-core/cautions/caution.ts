import { worded } from '../wording/index.ts';

/** Where a caution is said besides README.md and the Cautions page, which hold all of them. */
export const cautionPlaces = [
  'ferment',
  'prepare',
  'prompt',
  'calibrate',
  'debrief',
  'proof',
  'report',
  'worksheet',
  'pack',
] as const;

export type CautionPlace = (typeof cautionPlaces)[number];

/** One way in which people can be hurt or misled. */
export interface Caution {
  readonly id: string;
  /** What to do or to leave, as a whole sentence. */
  readonly act: string;
  /** What can hurt and what else helps: reads on after the act, after the check, and alone. */
  readonly because: string;
  /** What is confirmed before heat; exactly the cautions of Prepare have one. */
  readonly check?: string;
  readonly places: readonly CautionPlace[];
  /** Where it is from; left out where it is common practice and has no source. */
  readonly source?: string;
}

/** What is said at the end of a list of cautions, for those without a source. */
export const commonPractice = worded(
  'Where no source is named: common practice in teaching laboratories, no source.',
);
