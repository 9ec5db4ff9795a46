export * from './clock/index.ts';
export * from './file-layer/index.ts';
export * from './probe/index.ts';
export * from './pseudo-terminal/index.ts';
export * from './recorder/index.ts';
export * from './run-library/index.ts';
export * from './session/index.ts';
export * from './virtual-probe/index.ts';
