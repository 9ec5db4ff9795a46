export * from './random/index.ts';
export * from './result/index.ts';
