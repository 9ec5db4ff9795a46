export { createRememberingProbeHub } from './create-remembering-probe-hub.ts';
export { probesFileName, probesFormat } from './probes-file.ts';
export { sourceAsNow } from './source-as-now.ts';
