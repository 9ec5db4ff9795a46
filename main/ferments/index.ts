/** The log of a ferment that is kept by hand, and the record of how warm it was kept. */
export { doubtfulFerments } from './doubtful-ferments.ts';
export { createFermentArchive } from './ferment-archive.ts';
export { createFermentMemory, type FermentMemory } from './ferment-memory.ts';
export { createWarmthKeeper, type WarmthKeeper } from './warmth-keeper.ts';
