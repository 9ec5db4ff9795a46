export * from './result/index.ts';
