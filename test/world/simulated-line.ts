import type { ProbeHubOptions } from '#main';
import { latin1Bytes, type PortInfo, succeed } from '#shared-core';
import type { Random } from '../../shared-core/random/create-random.ts';
import type { Place } from './draw-still.ts';
import type { WorldTime } from './world-time.ts';

type OpenLine = NonNullable<ProbeHubOptions['openLine']>;
type Listeners = Parameters<OpenLine>[1];

/** What the line does at the moment. */
export interface LineMood {
  noise: boolean;
  plugged: boolean;
  moved: boolean;
  opensAfterS: number;
  flood: boolean;
  stutters: boolean;
  mute: boolean;
}

export interface SimulatedLine {
  readonly mood: LineMood;
  /** The name of its port where nothing has happened yet. */
  readonly firstPath: string;
  port(): PortInfo | null;
  readonly openLine: OpenLine;
  /** The program that had it open is gone. */
  letGo(): void;
}

export interface LineParts {
  readonly time: WorldTime;
  readonly random: Random;
  /** Names of files that are there, so that none counts as pulled: the usual port, and the one it comes back at. */
  readonly paths: readonly [string, string];
  readonly serialNumber: string;
  readonly places: readonly Place[];
  readonly temperatureC: (place: Place) => number;
}

/** What the system keeps for a program that does not read [bytes]. */
const systemBufferBytes = 4096;
const stutterS = 3;

/** A probe at the far end of a serial line: one line of text a second for each of its sensors. */
export function createSimulatedLine(parts: LineParts): SimulatedLine {
  const { time, random, paths, serialNumber, places, temperatureC } = parts;
  const { bench, computer } = time;
  const mood: LineMood = {
    noise: false,
    plugged: true,
    moved: false,
    opensAfterS: 0,
    flood: false,
    stutters: false,
    mute: false,
  };
  let listening: Listeners | null = null;
  let openPath = '';
  let kept: Uint8Array[] = [];
  let keptBytes = 0;
  let keptSinceS = 0;
  const pathNow = () => paths[mood.moved ? 1 : 0];

  const openLine: OpenLine = async ({ path }, listeners) => {
    if (mood.opensAfterS > 0) {
      await new Promise<void>((done) => bench.after(mood.opensAfterS, done));
    }
    if (!mood.plugged || path !== pathNow()) {
      return { ok: false, error: { kind: 'port-not-found', path } };
    }
    listening = listeners;
    openPath = path;
    kept = [];
    keptBytes = 0;
    return succeed({
      write: async () => succeed(null),
      changeSpeed: async () => succeed(null),
      close: async () => {
        if (listening === listeners) listening = null;
      },
    });
  };

  /** The system hands over what has come when the program has a turn, in one piece. */
  function deliver(bytes: Uint8Array): void {
    if (kept.length === 0) keptSinceS = time.nowS();
    kept.push(bytes);
    keptBytes += bytes.length;
    if (computer.isRunning()) {
      if (!mood.stutters || time.nowS() - keptSinceS >= stutterS) handOver();
      return;
    }
    while (keptBytes > systemBufferBytes) keptBytes -= kept.shift()?.length ?? keptBytes;
  }

  function handOver(): void {
    const all = kept.length === 1 ? (kept[0] ?? new Uint8Array()) : Buffer.concat(kept);
    kept = [];
    keptBytes = 0;
    listening?.bytes(all);
  }

  function speak(): void {
    if (listening === null) return;
    if (mood.flood) deliver(new Uint8Array(50_000).fill(0x37));
    if (mood.noise) {
      const bytes = Array.from({ length: 40 }, () => random.integer(0x80, 0xff));
      deliver(Uint8Array.of(...bytes, 0x0a));
    }
    if (mood.mute || mood.flood) return;
    const text = places.map((place) => `${place},${temperatureC(place).toFixed(4)}\n`).join('');
    const bytes = latin1Bytes(text);
    const cutAt = random.integer(0, bytes.length);
    deliver(bytes.subarray(0, cutAt));
    deliver(bytes.subarray(cutAt));
  }

  bench.every(1, speak);
  // The end of a flood is the end of its line.
  bench.every(0.1, () => {
    if (listening === null || !computer.isRunning()) return;
    if (mood.plugged && openPath === pathNow()) return;
    const ended = listening;
    listening = null;
    ended.closed(null);
  });
  return {
    mood,
    firstPath: paths[0],
    port: () =>
      mood.plugged
        ? {
            path: pathNow(),
            manufacturer: null,
            vendorId: '1209',
            productId: '0001',
            serialNumber,
            likelyProbe: true,
          }
        : null,
    openLine,
    letGo() {
      listening = null;
    },
  };
}
