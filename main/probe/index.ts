export type { ProbeHub, ProbeLinkChange, ProbeListeners, ProbeReading } from './probe-hub.ts';
