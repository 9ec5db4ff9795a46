/**
 * The services of a shell with a serial process of their own: each line of standard input is one request, `{name, body}`, and each
 * line of standard output its answer.
 *
 * Usage: node asked-services.mjs RUNS_FOLDER PROBE_PROGRAM
 */
import process from 'node:process';
import { createInterface } from 'node:readline';
import { pathToFileURL } from 'node:url';
import {
  createIsolatedProbeHub,
  createSession,
  forkProbeWorker,
  systemClock,
  systemScheduler,
} from '#main';
import { createMonitor, modelVersion } from '#shared-core';

const [runsFolder = '', probeProgram = ''] = process.argv.slice(2);
const session = await createSession({
  probeHub: createIsolatedProbeHub({
    scheduler: systemScheduler,
    startWorker: () => forkProbeWorker(pathToFileURL(probeProgram)),
  }),
  clock: systemClock,
  createMonitor,
  runsFolder,
  app: { version: '0.1.0', modelVersion, shell: 'loopback' },
});
for await (const line of createInterface({ input: process.stdin })) {
  const { name, body } = JSON.parse(line);
  console.log(JSON.stringify(await session.handle(name, body, { mayCommand: true })));
}
await session.close();
process.exit(0);
