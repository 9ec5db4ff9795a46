export * from './clock/index.ts';
export * from './probe/index.ts';
export * from './pseudo-terminal/index.ts';
export * from './virtual-probe/index.ts';
