import type { Random } from '../random/index.ts';

/** The part of a random source that a simulated probe needs; `createRandom` gives one. */
export type RandomSource = Pick<Random, 'normal' | 'exponential'>;
