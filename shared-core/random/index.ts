export { createRandom, type Random } from './create-random.ts';
export { fnv1a64 } from './fnv1a-64.ts';
export { splitMix64 } from './split-mix-64.ts';
export { type Xoshiro128State, xoshiro128 } from './xoshiro-128.ts';
