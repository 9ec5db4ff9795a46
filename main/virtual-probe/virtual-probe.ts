import { latin1Bytes } from '#shared-core';
import type { Clock } from '../clock/index.ts';
import type { VirtualReadings, VirtualStill } from './virtual-still.ts';

export interface VirtualProbeOptions {
  readonly still: VirtualStill;
  readonly clock: Clock;
  /** Seconds of the still for each second of the clock, 1 … 240. */
  readonly timeScale: number;
  readonly send: (bytes: Uint8Array) => void;
}

/** Speaks for a virtual still, one line for each of its seconds, as a small board would. */
export interface VirtualProbe {
  /** Sends every line that is due; call it a few dozen times a second. */
  tick(): void;
  /** Seconds of the still so far. */
  stillS(): number;
}

/** After a long stall (a laptop lid) the probe skips ahead instead of sending minutes of lines at once. */
const longestCatchUpS = 600;

export function createVirtualProbe(options: VirtualProbeOptions): VirtualProbe {
  const { still, clock, timeScale, send } = options;
  let lastClockS = clock.monotonicS();
  let dueS = 0;
  let nextLineS = 0;
  return {
    tick() {
      const nowS = clock.monotonicS();
      dueS += Math.min(longestCatchUpS, (nowS - lastClockS) * timeScale);
      lastClockS = nowS;
      let lines = '';
      while (nextLineS <= dueS) {
        lines += lineFor(still.readAt(nextLineS));
        nextLineS += 1;
      }
      if (lines !== '') send(latin1Bytes(lines));
    },
    stillS: () => dueS,
  };
}

function lineFor({ headC, potC }: VirtualReadings): string {
  const fields = [
    ...(headC === null ? [] : ['head', headC.toFixed(4)]),
    ...(potC === null ? [] : ['pot', potC.toFixed(4)]),
  ];
  return fields.length === 0 ? '' : `${fields.join(',')}\r\n`;
}
