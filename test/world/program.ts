import {
  createProbeHub,
  createSession,
  type FileLayer,
  type ProbeHub,
  type ProbeReading,
  type Session,
} from '#main';
import { createMonitor, fail, type Monitor, type RunSettings, type Snapshot } from '#shared-core';
import { plantInHub, plantInSession, plantInSnapshot } from './plant.ts';
import type { PlantedFault } from './planted-fault.ts';
import type { SimulatedLine } from './simulated-line.ts';
import type { ProgramTimers, WorldTime } from './world-time.ts';

export const runsFolder = '/runs';

export interface ProgramParts {
  readonly time: WorldTime;
  readonly files: FileLayer;
  readonly lines: readonly SimulatedLine[];
  readonly planted: PlantedFault | undefined;
  /** Whether the folder is this program's; null where nobody can say, since it is gone. */
  readonly holdsFolder: () => boolean | null;
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
  const session = await createSession({
    probeHub: hub,
    clock,
    scheduler: timers,
    uptimeS,
    fileLayer: whileAlive(parts.files, () => isAlive),
    takeFolder: async () =>
      holdsFolder() === true
        ? { isHeld: () => holdsFolder() !== false, release: async () => undefined }
        : null,
    runsFolder,
    app: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
    createMonitor: (settings) =>
      parts.isBeginning() ? watchedMonitor(settings, parts) : createMonitor(settings),
  });
  return {
    session: watchedSession(plantInSession(session, planted), parts.onFailedInside),
    hub: realHub,
    status: hub.status,
    timers: timers.count,
    kill() {
      isAlive = false;
      silence(timers, lines);
    },
  };
}

function watchedSession(session: Session, onFailedInside: (found: string) => void): Session {
  return {
    ...session,
    async handle(name, body, asker) {
      const answer = await session.handle(name, body, asker);
      if (!answer.ok && answer.error.kind === 'internal') {
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

/** A program that was killed asks nothing more of the disk, and hears no answer. */
function whileAlive(files: FileLayer, isAlive: () => boolean): FileLayer {
  const never = new Promise<never>(() => {});
  const gone = { ok: false, error: { kind: 'failed', path: '', message: 'killed' } } as const;
  const open = (made: ReturnType<FileLayer['openAppend']>): typeof made =>
    made.ok
      ? {
          ok: true,
          value: {
            write: (bytes) => (isAlive() ? made.value.write(bytes) : gone),
            sync: () => (isAlive() ? answered(made.value.sync()) : never),
            close: () => made.value.close(),
          },
        }
      : made;
  const answered = async <T>(asked: Promise<T>): Promise<T> => {
    const answer = await asked;
    return isAlive() ? answer : never;
  };
  const ask = <T>(act: () => Promise<T>): Promise<T> => (isAlive() ? answered(act()) : never);
  return {
    makeFolder: (at) => ask(() => files.makeFolder(at)),
    claimFolder: (at) => ask(() => files.claimFolder(at)),
    makeTemporaryFolder: (name) => ask(() => files.makeTemporaryFolder(name)),
    createAppend: (at) => (isAlive() ? open(files.createAppend(at)) : gone),
    openAppend: (at) => (isAlive() ? open(files.openAppend(at)) : gone),
    syncFolder: (at) => ask(() => files.syncFolder(at)),
    list: (at) => ask(() => files.list(at)),
    sizeBytes: (at) => ask(() => files.sizeBytes(at)),
    stateOf: (at) => ask(() => files.stateOf(at)),
    read: (at, offset, length) => ask(() => files.read(at, offset, length)),
    rename: (from, to) => ask(() => files.rename(from, to)),
    remove: (at) => ask(() => files.remove(at)),
    truncate: (at, length) => ask(() => files.truncate(at, length)),
    freeBytes: (at) => ask(() => files.freeBytes(at)),
  };
}
