import { createProbeHub, createSession, type Session, systemClock } from '#main';
import { createMonitor, modelVersion } from '#shared-core';

export interface Composition {
  readonly shell: 'electron' | 'loopback';
  readonly version: string;
  readonly runsFolder: string;
}

/** The services of a shell, put together from their parts with the computer's own clock and disk. */
export function composeServices({ shell, version, runsFolder }: Composition): Promise<Session> {
  return createSession({
    probeHub: createProbeHub({ clock: systemClock }),
    clock: systemClock,
    createMonitor,
    runsFolder,
    app: { version, modelVersion, shell },
  });
}
