/**
 * The services of the loopback shell with a run being recorded, for attacks from another process. Says over its channel where its
 * windows open, and for each message `figures` how long it was ever kept from its work since the last, and its memory at the most.
 *
 * Usage: fork of attacked-program.ts RUNS_FOLDER PORT_OF_THE_PROBE
 */
import { randomBytes } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import process from 'node:process';
import { forkDesk, forkProbeWorker } from '#main';
import { defaultRunSettings, serialSourceSchema } from '#shared-core';
import { composeServices } from '../../app/compose-services.ts';
import { startLoopback } from '../../app/loopback/start-loopback.ts';
import type { AttackedFigures, AttackedPlace } from './attacked-services.ts';

const [folder = '', probePath = ''] = process.argv.slice(2);
const runsFolder = path.join(folder, 'runs');
const windowFolder = path.join(folder, 'window');
const teacher = { mayCommand: true };
const sampleEveryMs = 20;

mkdirSync(windowFolder);
writeFileSync(path.join(windowFolder, 'index.html'), '<p>window</p>');
const session = await composeServices({
  shell: 'loopback',
  version: '0.1.0',
  runsFolder,
  startWorker: () => forkProbeWorker(),
  startDesk: () => forkDesk(),
});
const loopback = await startLoopback({
  services: session,
  windowFolder,
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

const delay = monitorEventLoopDelay({ resolution: 5 });
delay.enable();
let mostBytes = 0;
setInterval(() => {
  mostBytes = Math.max(mostBytes, process.memoryUsage.rss());
}, sampleEveryMs);

process.on('message', (message) => {
  if (message === 'stop') void stop();
  if (message !== 'figures') return;
  const figures = { longestStallMs: delay.max / 1e6, mostMb: mostBytes / 1e6 };
  process.send?.(figures satisfies AttackedFigures);
  delay.reset();
  mostBytes = 0;
});
// Whoever attacks is gone: nothing is left to be measured.
process.on('disconnect', () => process.exit(1));
const { port, viewerUrl } = loopback.value;
process.send?.({ port, viewerUrl } satisfies AttackedPlace);

async function demand(name: string, body: unknown): Promise<void> {
  const result = await session.handle(name, body, teacher);
  if (!result.ok) throw new Error(`${name}: ${JSON.stringify(result.error)}`);
}

async function stop(): Promise<void> {
  await demand('run/stop', {});
  await session.close();
  process.exit(0);
}
