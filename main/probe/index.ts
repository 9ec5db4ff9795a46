export { createProbeHub, type ProbeHubOptions } from './create-probe-hub.ts';
export { portAdvice } from './port/port-advice.ts';
export { portProblem } from './port/port-problem.ts';
export type { ProbeHub, ProbeLinkChange, ProbeListeners, ProbeReading } from './probe-hub.ts';
