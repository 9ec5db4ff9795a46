import type { Mark } from '#shared-core';
import { type Clock, type Scheduler, systemScheduler } from '../clock/index.ts';
import { createRigHands } from './rig-hands.ts';
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
  readonly scheduler?: Scheduler;
  readonly send: (bytes: Uint8Array) => void;
}

export interface RunningVirtualProbe {
  heat(mark: HeatMark): void;
  /** Does what a person marks in a run. */
  follow(mark: Pick<Mark, 'markId' | 'mark'>): void;
  /** What the receiver holds that stands there now [mL]. */
  receiverMl(): number;
  stop(): void;
}

const tickS = 0.025;

/** A virtual still and its probe, running until stopped. */
export function startVirtualProbe(options: StartVirtualProbeOptions): RunningVirtualProbe {
  const { rig, seed, heated, clock, scheduler = systemScheduler, timeScale, send } = options;
  const still = createVirtualStill({ rig: virtualRigs[rig], seed, heated });
  const probe = createVirtualProbe({ still, clock, timeScale, send });
  const hands = createRigHands(still);
  const stopTicking = scheduler.every(tickS, probe.tick);
  return {
    heat: (mark) => still.heat(mark),
    follow: hands.follow,
    receiverMl: hands.receiverMl,
    stop: stopTicking,
  };
}
