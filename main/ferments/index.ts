/** The log of a ferment that is kept by hand. */
export { createFermentMemory, type FermentMemory } from './ferment-memory.ts';
