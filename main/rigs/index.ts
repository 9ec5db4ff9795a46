/** The rigs of a bench, kept from run to run. */
export { createRigMemory, type RigMemory } from './rig-memory.ts';
