/** A simulated still that speaks through a real serial line. */

export {
  type RunningVirtualProbe,
  type StartVirtualProbeOptions,
  startVirtualProbe,
} from './start-virtual-probe.ts';
export { createVirtualProbe, type VirtualProbe } from './virtual-probe.ts';
export {
  createVirtualStill,
  type HeatMark,
  isVirtualRigName,
  type VirtualRigName,
  type VirtualStill,
  virtualRigs,
} from './virtual-still.ts';
