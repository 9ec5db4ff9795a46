export * from './alcoholometry/index.ts';
export * from './contract/index.ts';
export * from './equilibrium/index.ts';
export * from './monitor/index.ts';
export * from './random/index.ts';
export * from './result/index.ts';
export * from './run/index.ts';
export * from './snapshot/index.ts';
