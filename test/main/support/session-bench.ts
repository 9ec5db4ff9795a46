import { onTestFinished } from 'vitest';
import {
  createSession,
  type FileLayer,
  nodeFileLayer,
  type ProbeReading,
  type Session,
  type SessionSetup,
} from '#main';
import {
  createMonitor,
  defaultRunSettings,
  type Monitor,
  type RequestAnswer,
  type RequestBody,
  type RequestName,
  type RunSettings,
} from '#shared-core';
import { createFakeProbeHub } from './fake-probe-hub.ts';
import { createManualTime } from './manual-time.ts';
import { temporaryFolder } from './temporary-folder.ts';

/** A window that may command. */
export const teacher = { mayCommand: true };

interface SessionOptions extends Pick<SessionSetup, 'startDesk'> {
  readonly runsFolder?: string;
  readonly timeScale?: number;
  readonly createMonitor?: (settings: RunSettings) => Monitor;
  readonly uptimeS?: () => number;
  readonly modelVersion?: string;
  /** Nothing is connected when the program starts. */
  readonly withoutProbe?: boolean;
  /** What this computer keeps outside of the folder of runs. */
  readonly knownFoldersFile?: string;
  /** What the disk does otherwise than a real one. */
  readonly faults?: Partial<FileLayer>;
}

/** A session over real files, with time and probe in the test's hand; closed when the test is over. */
export async function setUpSession(options: SessionOptions = {}) {
  const time = createManualTime();
  const probeHub = createFakeProbeHub(options.timeScale);
  if (options.withoutProbe) await probeHub.disconnect();
  const runsFolder = options.runsFolder ?? (await temporaryFolder());
  const session = await createSession({
    probeHub,
    clock: time.clock,
    scheduler: time.scheduler,
    uptimeS: options.uptimeS ?? time.clock.monotonicS,
    fileLayer: { ...nodeFileLayer, ...options.faults },
    runsFolder,
    ...(options.knownFoldersFile && { knownFoldersFile: options.knownFoldersFile }),
    ...(options.startDesk && { startDesk: options.startDesk }),
    createMonitor: options.createMonitor ?? createMonitor,
    app: { version: '0.1.0', modelVersion: options.modelVersion ?? '1', shell: 'loopback' },
  });
  onTestFinished(() => session.close());
  return { time, probeHub, runsFolder, session };
}

/** The answer to a teacher's request; a refusal fails the test. */
export async function ask<N extends RequestName>(
  session: Session,
  name: N,
  body: RequestBody<N>,
): Promise<RequestAnswer<N>> {
  const result = await session.handle(name, body, teacher);
  if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.error)}`);
  return result.value as RequestAnswer<N>;
}

const pieceBytes = 100_000;

/** The answer to a table that is taken in, brought piece by piece as a window does. */
export async function importTable(
  session: Session,
  content: Uint8Array | string,
  says: Partial<RequestBody<'imports/finish'>> = {},
): ReturnType<Session['handle']> {
  const bytes = Buffer.from(content);
  const { importId } = await ask(session, 'imports/begin', { bytes: bytes.length });
  for (let from = 0; from < bytes.length; from += pieceBytes) {
    const base64 = bytes.subarray(from, from + pieceBytes).toString('base64');
    await ask(session, 'imports/add', { importId, base64 });
  }
  const usual = {
    importId,
    encoding: 'auto',
    mapping: null,
    settings: defaultRunSettings,
  } as const;
  return session.handle('imports/finish', { ...usual, ...says }, teacher);
}

/** A table taken in as a run; a refusal fails the test. */
export async function takeIn(
  session: Session,
  content: Uint8Array | string,
  says: Partial<RequestBody<'imports/finish'>> = {},
): Promise<RequestAnswer<'imports/finish'>> {
  const taken = await importTable(session, content, says);
  if (!taken.ok) throw new Error(JSON.stringify(taken.error));
  return taken.value as RequestAnswer<'imports/finish'>;
}

/** A run as a table, fetched piece by piece as a window does. */
export async function fetchTable(
  session: Session,
  runId: string,
  format: RequestBody<'packs/make-table'>['format'],
): Promise<string> {
  const packId = 'table';
  await ask(session, 'packs/make-table', { packId, runId, format });
  const pieces: Buffer[] = [];
  for (let fromByte: number | null = 0; fromByte !== null; ) {
    const read: RequestAnswer<'packs/read'> = await ask(session, 'packs/read', {
      packId,
      fromByte,
    });
    pieces.push(Buffer.from(read.base64, 'base64'));
    fromByte = read.nextByte;
  }
  await ask(session, 'packs/drop', { packId });
  return Buffer.concat(pieces).toString('utf8');
}

/** A reading of the head. */
export function head(atS: number, value: number): ProbeReading {
  return { atS, channel: 'head', value, unit: '°C', quality: 'good' };
}

/** A head that warms up, holds and leaves, a little uneven so that no probe looks frozen. */
export function temperatureC(timeS: number): number {
  const unevenC = 0.0625 * (Math.floor(timeS / 3) % 3);
  if (timeS < 300) return 22 + timeS * 0.02 + unevenC;
  if (timeS < 360) return 28 + (timeS - 300) * 0.84 + unevenC;
  if (timeS < 1500) return 78.2 + unevenC;
  return 78.2 + (timeS - 1500) * 0.04 + unevenC;
}
