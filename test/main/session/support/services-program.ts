/**
 * The services of a shell with a serial process of their own: connects to the port, records, and says on its standard output when
 * the run has begun; stops at the first line of its standard input.
 *
 * Usage: node --import tsx services-program.ts RUNS_FOLDER PORT
 */
import process from 'node:process';
import { createInterface } from 'node:readline';
import {
  createIsolatedProbeHub,
  createSession,
  forkProbeWorker,
  systemClock,
  systemScheduler,
} from '#main';
import { createMonitor, defaultRunSettings, serialSourceSchema } from '#shared-core';

const [runsFolder = '', port = ''] = process.argv.slice(2);
const teacher = { mayCommand: true };
const session = await createSession({
  probeHub: createIsolatedProbeHub({
    clock: systemClock,
    scheduler: systemScheduler,
    startWorker: () => forkProbeWorker(),
  }),
  clock: systemClock,
  createMonitor,
  runsFolder,
  app: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
});
const source = serialSourceSchema.parse({ kind: 'serial', path: port, language: 'plain-text' });
const connected = await session.handle('probe/connect', { source }, teacher);
const started = connected.ok
  ? await session.handle('run/start', { settings: defaultRunSettings }, teacher)
  : connected;
console.log(JSON.stringify(started));
createInterface({ input: process.stdin }).once('line', () => {
  void session
    .handle('run/stop', {}, teacher)
    .then(() => session.close())
    .then(() => process.exit(0));
});
