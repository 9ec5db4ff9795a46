/** The run as one strip: trace, stages, marks and forecast. */
export { bandOnProbe } from './band-on-probe.ts';
export { expectedEnd } from './expected-end.ts';
export { usePlotFrame } from './plot-frame.ts';
export { RunStrip } from './run-strip.tsx';
