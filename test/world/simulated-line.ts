import type { ProbeHubOptions } from '#main';
import { latin1Bytes, type PortInfo, succeed } from '#shared-core';
import type { Random } from '../../shared-core/random/create-random.ts';
import type { ManualTime } from '../main/support/manual-time.ts';

type Listeners = Parameters<NonNullable<ProbeHubOptions['openLine']>>[1];

/** Ports of the simulated computer: names of files that are there, so that none counts as pulled. */
export const firstPort = '/dev/null';
export const otherPort = '/dev/zero';

/** What the line does at the moment. */
export interface LineMood {
  noise: boolean;
  plugged: boolean;
  path: string;
  opensAfterS: number;
  flood: boolean;
  mute: boolean;
}

/** A probe at the far end of a serial line: one line of text a second. */
export function createSimulatedLine(
  time: ManualTime,
  random: Random,
  headC: (atS: number) => number,
) {
  const mood: LineMood = {
    noise: false,
    plugged: true,
    path: firstPort,
    opensAfterS: 0,
    flood: false,
    mute: false,
  };
  const startS = time.clock.monotonicS();
  let listening: Listeners | null = null;
  let openPath = '';

  const ports = (): readonly PortInfo[] =>
    mood.plugged
      ? [
          {
            path: mood.path,
            manufacturer: null,
            vendorId: '1209',
            productId: '0001',
            serialNumber: 'still-1',
            likelyProbe: true,
          },
        ]
      : [];

  const openLine: NonNullable<ProbeHubOptions['openLine']> = async ({ path }, listeners) => {
    if (mood.opensAfterS > 0) {
      await new Promise<void>((done) => time.scheduler.after(mood.opensAfterS, done));
    }
    if (!mood.plugged || path !== mood.path) {
      return { ok: false, error: { kind: 'port-not-found', path } };
    }
    listening = listeners;
    openPath = path;
    return succeed({
      write: async () => succeed(null),
      changeSpeed: async () => succeed(null),
      close: async () => {
        if (listening === listeners) listening = null;
      },
    });
  };

  function speak(): void {
    if (mood.flood) listening?.bytes(new Uint8Array(200_000).fill(0x37));
    if (mood.noise) {
      const bytes = Array.from({ length: 40 }, () => random.integer(0x80, 0xff));
      listening?.bytes(Uint8Array.of(...bytes, 0x0a));
    }
    if (mood.mute || mood.flood) return;
    const text = latin1Bytes(`head,${headC(time.clock.monotonicS() - startS).toFixed(4)}\n`);
    const cutAt = random.integer(0, text.length);
    listening?.bytes(text.subarray(0, cutAt));
    listening?.bytes(text.subarray(cutAt));
  }

  time.scheduler.every(1, speak);
  // The end of a flood is the end of its line.
  time.scheduler.every(0.1, () => {
    if (listening === null || (mood.plugged && openPath === mood.path)) return;
    const ended = listening;
    listening = null;
    ended.closed(null);
  });
  return { mood, openLine, listPorts: async () => ports() };
}
