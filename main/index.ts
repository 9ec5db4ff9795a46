/** What the shells use of the services; each folder says what lives there. */
export * from './clock/index.ts';
export * from './export/index.ts';
export * from './ferments/index.ts';
export * from './file-layer/index.ts';
export * from './probe/index.ts';
export * from './problem-report/index.ts';
export * from './pseudo-terminal/index.ts';
export * from './recorder/index.ts';
export * from './rigs/index.ts';
export * from './run-library/index.ts';
export * from './session/index.ts';
export * from './side-process/index.ts';
export * from './virtual-probe/index.ts';
