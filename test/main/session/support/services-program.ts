/**
 * The services of a shell with a serial process of their own: connects to the port, records, and says on its standard output when
 * the run has begun, and then which process reads the probe; stops at the first line of its standard input.
 *
 * Usage: node --import tsx services-program.ts RUNS_FOLDER PORT
 */
import process from 'node:process';
import { createInterface } from 'node:readline';
import {
  createIsolatedProbeHub,
  createSession,
  forkProbeWorker,
  type ProbeWorker,
  systemClock,
  systemScheduler,
} from '#main';
import { createMonitor, defaultRunSettings, serialSourceSchema } from '#shared-core';

const [runsFolder = '', port = ''] = process.argv.slice(2);
const teacher = { mayCommand: true };
const readers: ProbeWorker[] = [];
const session = await createSession({
  probeHub: createIsolatedProbeHub({
    scheduler: systemScheduler,
    startWorker() {
      const reader = forkProbeWorker();
      readers.push(reader);
      return reader;
    },
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
console.log(JSON.stringify(readers.at(-1)?.processId ?? null));
createInterface({ input: process.stdin }).once('line', () => {
  void session
    .handle('run/stop', {}, teacher)
    .then(() => session.close())
    .then(() => process.exit(0));
});
