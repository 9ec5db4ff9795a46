export { createRigMemory, type RigMemory } from './rig-memory.ts';
