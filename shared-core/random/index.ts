export { createRandom, type Random } from './create-random.ts';
