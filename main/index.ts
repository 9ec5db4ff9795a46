export * from './clock/index.ts';
export * from './probe/index.ts';
