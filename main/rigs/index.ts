export { createRigMemory, type RigMemory, rigsFileName } from './rig-memory.ts';
export { rigsFormat } from './rigs-file.ts';
