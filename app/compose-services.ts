import {
  createIsolatedProbeHub,
  createSession,
  type FileLayer,
  type ProbeWorker,
  type Session,
  type SideProcess,
  systemClock,
  systemScheduler,
} from '#main';
import { createMonitor, modelVersion } from '#shared-core';

export interface Composition {
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
  readonly runsFolder: string;
  /** Where this computer keeps which folders of runs have been there; where none is given, nothing is remembered. */
  readonly knownFoldersFile?: string | undefined;
  /** The computer's own disk where none is given. */
  readonly fileLayer?: FileLayer;
  /** Starts the process that reads serial ports, in the way of this shell. */
  readonly startWorker: () => ProbeWorker;
  /** Starts the process that goes through whole runs, likewise. */
  readonly startDesk: () => SideProcess;
}

/** The services of a shell, put together from their parts with the computer's own clock and disk. */
export function composeServices(composition: Composition): Promise<Session> {
  const { shell, version, runsFolder, knownFoldersFile, startWorker, startDesk, fileLayer } =
    composition;
  return createSession({
    probeHub: createIsolatedProbeHub({
      scheduler: systemScheduler,
      startWorker,
    }),
    clock: systemClock,
    createMonitor,
    runsFolder,
    startDesk,
    ...(knownFoldersFile && { knownFoldersFile }),
    ...(fileLayer && { fileLayer }),
    app: { version, modelVersion, shell },
  });
}
