/** The rigs of a bench, kept from run to run. */
export { createRigMemory, type RigMemory, rigsFileName } from './rig-memory.ts';
export { rigsFormat } from './rigs-file.ts';
