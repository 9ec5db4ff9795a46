/** Probes: ports, talks, links, the process that reads them. */

export { createProbeHub, type ProbeHubOptions } from './create-probe-hub.ts';
export {
  createRememberingProbeHub,
  probesFileName,
  probesFormat,
  sourceAsNow,
} from './memory/index.ts';
export { portAdvice } from './port/port-advice.ts';
export { portProblem } from './port/port-problem.ts';
export {
  identityAt,
  isSameDevice,
  type UsbIdentity,
  usbIdentitySchema,
  whereIsDevice,
} from './port/same-device.ts';
export type {
  GivenUp,
  ProbeHub,
  ProbeLinkChange,
  ProbeListeners,
  ProbeReading,
} from './probe-hub.ts';
export {
  createIsolatedProbeHub,
  type IsolatedProbeHubOptions,
} from './worker/create-isolated-probe-hub.ts';
export { forkProbeWorker } from './worker/fork-probe-worker.ts';
export type { ProbeWorker, WorkerPort } from './worker/worker-port.ts';
