export * from './monitor.ts';
