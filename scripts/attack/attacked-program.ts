/**
 * The services of the loopback shell with a run being recorded, for attacks from another process. Says over its channel where its
 * windows open, and for each message `figures` the longest piece of work since the last, and its memory at the most.
 *
 * Usage: fork of attacked-program.ts RUNS_FOLDER PORT_OF_THE_PROBE
 */
import { randomBytes } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { type AppendFile, type FileLayer, forkDesk, forkProbeWorker, nodeFileLayer } from '#main';
import { defaultRunSettings, type Result, serialSourceSchema, succeed } from '#shared-core';
import { createClassViewDoor } from '../../app/class-view/index.ts';
import { composeServices } from '../../app/compose-services.ts';
import { createWindowFiles } from '../../app/files/index.ts';
import { startLoopback } from '../../app/loopback/start-loopback.ts';
import { watchLongestPiece } from '../gaps/longest-piece.ts';
import { childrenOf, residentBytesOf } from '../measuring/process-cost.ts';
import type { AttackedFigures, AttackedPlace } from './attacked-services.ts';

const [folder = '', probePath = ''] = process.argv.slice(2);
const runsFolder = path.join(folder, 'runs');
const windowFolder = path.join(folder, 'window');
const teacher = { mayCommand: true };
const sampleEveryMs = 20;
const slowSyncMs = 5000;
let syncsAreSlow = false;
let deskId: number | null = null;

const fileLayer: FileLayer = {
  ...nodeFileLayer,
  createAppend: async (at) => withSlowSync(await nodeFileLayer.createAppend(at)),
  openAppend: async (at) => withSlowSync(await nodeFileLayer.openAppend(at)),
};

function withSlowSync<E>(opened: Result<AppendFile, E>): Result<AppendFile, E> {
  if (!opened.ok) return opened;
  const file = opened.value;
  return succeed({
    ...file,
    async sync() {
      if (syncsAreSlow) await pause(slowSyncMs);
      return file.sync();
    },
  });
}

mkdirSync(windowFolder);
writeFileSync(path.join(windowFolder, 'index.html'), '<p>window</p>');
const windowFiles = createWindowFiles(windowFolder);
const session = await composeServices({
  shell: 'loopback',
  version: '0.1.0',
  runsFolder,
  startWorker: () => forkProbeWorker(),
  fileLayer,
  startDesk() {
    const desk = forkDesk();
    deskId = desk.processId;
    return desk;
  },
});
const loopback = await startLoopback({
  services: session,
  windowFiles,
  port: 0,
  randomToken: () => randomBytes(24).toString('base64url'),
});
if (!loopback.ok) throw new Error(loopback.error.kind);
const source = serialSourceSchema.parse({
  kind: 'serial',
  path: probePath,
  language: 'plain-text',
});
await demand('probe/connect', { source });
await demand('run/start', { settings: defaultRunSettings });

const piece = watchLongestPiece();
let mostBytes = 0;
setInterval(() => {
  mostBytes = Math.max(mostBytes, bytesOfAll());
}, sampleEveryMs);

process.on('message', (message) => {
  if (message === 'stop') void stop();
  if (message === 'slow-syncs' || message === 'usual-syncs') {
    syncsAreSlow = message === 'slow-syncs';
  }
  if (deskId !== null && message === 'halt-desk') process.kill(deskId, 'SIGSTOP');
  if (deskId !== null && message === 'wake-desk') process.kill(deskId, 'SIGCONT');
  if (message !== 'figures') return;
  const figures = { longestStallMs: piece.takeMs(), mostMb: mostBytes / 1e6 };
  process.send?.(figures satisfies AttackedFigures);
  mostBytes = 0;
});
// Whoever attacks is gone: nothing is left to be measured.
process.on('disconnect', () => process.exit(1));
const { port, viewerUrl } = loopback.value;
// Callers of this computer come from as many addresses as they like, so its own stands for the local network.
const classView = createClassViewDoor({
  services: session,
  windowFiles,
  findHost: () => '127.0.0.1',
});
const opened = await classView.open();
if (opened.state !== 'open') throw new Error(opened.state);
process.send?.({ port, viewerUrl, classAddress: opened.address } satisfies AttackedPlace);

/** Of this process and those that it started: the reader of the probe, and the desk. */
function bytesOfAll(): number {
  return childrenOf(process.pid).reduce(
    (sum, child) => sum + residentBytesOf(child),
    process.memoryUsage.rss(),
  );
}

async function demand(name: string, body: unknown): Promise<void> {
  const result = await session.handle(name, body, teacher);
  if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.error)}`);
}

async function stop(): Promise<void> {
  await classView.shut();
  await demand('run/stop', {});
  await session.close();
  process.exit(0);
}
