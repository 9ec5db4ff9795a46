export { type BoxSize, useBoxSize } from '../figures/use-box-size.ts';
export { bandOnProbe } from './band-on-probe.ts';
export { expectedEnd } from './expected-end.ts';
export { RunStrip } from './run-strip.tsx';
export { StripTextContext } from './strip-text.ts';
