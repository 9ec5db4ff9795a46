/** How a model lets one second pass: what the state gains in variance, and how much of a rate it keeps. */
export interface Model {
  readonly isWet: boolean;
  /** What the vapour's level gains [K²/s]. */
  readonly levelPower: number;
  /** What its rate gains [(K/s)²/s], and keeps in a second. */
  readonly ratePower: number;
  readonly rateKept: number;
  /** What the rate of a bulb without vapour gains [(K/s)²/s]. */
  readonly driftPower: number;
}

/**
 * Vapour that keeps its course: a departing head bends from rest to some 1 K/min within some four minutes, (0.015 K/s)²
 * over 225 s, and the level wanders a little with boil-up.
 */
const keepsCourse: Model = {
  isWet: true,
  levelPower: 2e-5,
  ratePower: 2e-7,
  rateKept: Math.exp(-1 / 900),
  driftPower: 4e-4,
};
/** Vapour that finds another level: heat turned up, reflux that builds up. By simulation: a kelvin in some minutes. */
export const changesCourse: Model = {
  isWet: true,
  levelPower: 0.0025,
  ratePower: 4e-5,
  rateKept: Math.exp(-1 / 30),
  driftPower: 4e-4,
};
/** No vapour at the bulb: it says nothing of the vapour, which may come back somewhat different. */
export const leaves: Model = {
  isWet: false,
  levelPower: 4e-4,
  ratePower: 2e-7,
  rateKept: Math.exp(-1 / 60),
  driftPower: 9e-4,
};
/** All three, in the order of the probabilities. */
export const models = [keepsCourse, changesCourse, leaves] as const;

/**
 * Probability of each change of model in a second. A flame is taken away at some two minutes' intervals and put back after
 * one; common practice, no source.
 */
export const changes: readonly (readonly number[])[] = [
  [0.985, 0.008, 0.007],
  [0.03, 0.955, 0.015],
  [0.015, 0.02, 0.965],
];
