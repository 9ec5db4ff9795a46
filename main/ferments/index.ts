/** The log of a ferment that is kept by hand. */
export { doubtfulFerments } from './doubtful-ferments.ts';
export { createFermentMemory, type FermentMemory } from './ferment-memory.ts';
