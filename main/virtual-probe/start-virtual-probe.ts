import type { Clock } from '../clock/index.ts';
import { createVirtualProbe } from './virtual-probe.ts';
import {
  createVirtualStill,
  type HeatMark,
  type VirtualRigName,
  virtualRigs,
} from './virtual-still.ts';

export interface StartVirtualProbeOptions {
  readonly rig: VirtualRigName;
  readonly seed: number;
  readonly timeScale: number;
  readonly heated: boolean;
  readonly clock: Clock;
  readonly send: (bytes: Uint8Array) => void;
}

export interface RunningVirtualProbe {
  heat(mark: HeatMark): void;
  stop(): void;
}

const tickMs = 25;

/** A virtual still and its probe, running until stopped. */
export function startVirtualProbe(options: StartVirtualProbeOptions): RunningVirtualProbe {
  const { rig, seed, heated, clock, timeScale, send } = options;
  const still = createVirtualStill({ rig: virtualRigs[rig], seed, heated });
  const probe = createVirtualProbe({ still, clock, timeScale, send });
  const timer = setInterval(() => probe.tick(), tickMs);
  return {
    heat: (mark) => still.heat(mark),
    stop: () => clearInterval(timer),
  };
}
