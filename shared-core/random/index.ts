/** Chance that can be repeated from its seed. */
export { createRandom, type Random } from './create-random.ts';
export { systematicPicks } from './systematic-picks.ts';
