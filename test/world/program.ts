import {
  createProbeHub,
  createSession,
  type FileLayer,
  type ProbeHub,
  type ProbeReading,
  type Session,
} from '#main';
import { createMonitor, fail, type Monitor, type RunSettings, type Snapshot } from '#shared-core';
import { plantInDesk, plantInHub, plantInSession, plantInSnapshot } from './plant.ts';
import { plantForHeldDisk } from './plant-held.ts';
import type { PlantedFault } from './planted-fault.ts';
import { createSimulatedDesk, type SimulatedDesk } from './simulated-desk.ts';
import type { SimulatedLine } from './simulated-line.ts';
import { whileAlive } from './while-alive.ts';
import type { ProgramTimers, WorldTime } from './world-time.ts';

export const runsFolder = '/runs';

export interface ProgramParts {
  readonly time: WorldTime;
  readonly files: FileLayer;
  readonly lines: readonly SimulatedLine[];
  readonly planted: PlantedFault | undefined;
  /** Whether the folder is this program's; null where nobody can say, since it is gone. */
  readonly holdsFolder: () => boolean | null;
  /** Whole runs are gone through in a process beside it, as every shell has it; to start none is to look at the same code without a copy. */
  readonly hasDesk: boolean;
  /** Whether the next monitor is that of a run under way; others judge tables that are taken in and given out. */
  readonly isBeginning: () => boolean;
  /** A request was answered with a failure that nobody foresaw. */
  readonly onFailedInside: (found: string) => void;
  readonly onReadings: (readings: readonly ProbeReading[]) => void;
  readonly onMonitor: (monitor: Monitor) => void;
  readonly onConcluded: (snapshot: Snapshot) => void;
}

/** The program as it runs on the computer, from its start until it is closed or killed. */
export interface Program {
  readonly session: Session;
  /** As it is, without what is planted in it. */
  readonly hub: ProbeHub;
  /** What a window sees of it. */
  status(): ReturnType<ProbeHub['status']>;
  timers(): number;
  /** It has the folder, and what it goes on with is known. */
  holdsFolder(): boolean;
  readonly desk: SimulatedDesk;
  /** Not asked: it is simply gone. */
  kill(): void;
}

export async function startProgram(parts: ProgramParts): Promise<Program> {
  const { time, lines, planted, holdsFolder } = parts;
  const { clock, uptimeS } = time.computer;
  const timers = time.startProgram();
  let isAlive = true;
  const realHub = createProbeHub({
    clock,
    scheduler: timers,
    openLine: async (address, listeners) => {
      const line = lines.find((candidate) => candidate.port()?.path === address.path);
      if (line !== undefined) return line.openLine(address, listeners);
      return { ok: false, error: { kind: 'port-not-found', path: address.path } };
    },
    listPorts: async () => lines.flatMap((line) => line.port() ?? []),
    openTerminal: () => fail('the simulated computer has none'),
  });
  realHub.on('readings', parts.onReadings);
  const hub = plantInHub(realHub, planted);
  if (planted === 'timers-pile-up') timers.every(2, () => void timers.after(1e6, () => {}));
  let hasTaken = false;
  const desk = createSimulatedDesk({
    clock,
    filesOf: (isThere) => whileAlive(parts.files, () => isAlive && isThere()),
  });
  const session = await createSession({
    ...(parts.hasDesk && { startDesk: plantInDesk(desk, planted) }),
    probeHub: hub,
    clock,
    scheduler: timers,
    uptimeS,
    fileLayer: whileAlive(parts.files, () => isAlive),
    async takeFolder() {
      hasTaken = holdsFolder() === true;
      const isHeld = () => holdsFolder() !== false;
      return hasTaken ? { isHeld, release: async () => undefined } : null;
    },
    runsFolder,
    app: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
    createMonitor: (settings) =>
      parts.isBeginning() ? watchedMonitor(settings, parts) : createMonitor(settings),
  });
  return {
    session: watchedSession(
      plantForHeldDisk(plantInSession(session, planted), planted, {
        files: parts.files,
        timers,
        folder: runsFolder,
      }),
      desk,
      parts.onFailedInside,
    ),
    hub: realHub,
    status: hub.status,
    timers: timers.count,
    holdsFolder: () => hasTaken && holdsFolder() !== false,
    desk,
    kill() {
      isAlive = false;
      silence(timers, lines);
    },
  };
}

function watchedSession(
  session: Session,
  desk: SimulatedDesk,
  onFailedInside: (found: string) => void,
): Session {
  return {
    ...session,
    async handle(name, body, asker) {
      const killsBefore = desk.kills();
      const answer = await session.handle(name, body, asker);
      const isDeskThere = desk.kills() === killsBefore;
      if (!answer.ok && answer.error.kind === 'internal' && isDeskThere) {
        onFailedInside(`${name}: ${answer.error.message}`);
      }
      return answer;
    },
  };
}

function silence(timers: ProgramTimers, lines: readonly SimulatedLine[]): void {
  timers.end();
  for (const line of lines) line.letGo();
}

function watchedMonitor(settings: RunSettings, parts: ProgramParts): Monitor {
  const { planted, onConcluded } = parts;
  const differs = planted === 'verdict-differs';
  const monitor = createMonitor(
    differs ? { ...settings, leastStrengthAbv: settings.leastStrengthAbv + 9 } : settings,
  );
  const noted = (snapshot: Snapshot) => {
    onConcluded(snapshot);
    return plantInSnapshot(snapshot, planted);
  };
  parts.onMonitor(monitor);
  return {
    ...monitor,
    push: (input) => noted(monitor.push(input)),
    advanceTo: (timeS) => noted(monitor.advanceTo(timeS)),
  };
}
