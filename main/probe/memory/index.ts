/** What is remembered of a probe between two runs, and by whom. */
export { createRememberingProbeHub } from './create-remembering-probe-hub.ts';
export { probesFileName, probesFormat } from './probes-file.ts';
export { sourceAsNow } from './source-as-now.ts';
