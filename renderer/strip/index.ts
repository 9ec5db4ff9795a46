export { RunStrip } from './run-strip.tsx';
export { type BoxSize, useBoxSize } from './use-box-size.ts';
