import { spawn } from 'node:child_process';
import { once } from 'node:events';
import process from 'node:process';
import { text } from 'node:stream/consumers';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import {
  createIsolatedProbeHub,
  forkProbeWorker,
  openPseudoTerminal,
  type ProbeWorker,
  systemScheduler,
} from '#main';
import { latin1Bytes } from '#shared-core';
import { serialSource } from '../support/heard-hub.ts';
import { until } from '../support/until.ts';

test('a serial process that is killed, and one that is frozen, are replaced while this one goes on', async () => {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(terminal.error);
  const speaking = setInterval(() => terminal.value.write(latin1Bytes('78.42\n')), 50);
  const workers: ProbeWorker[] = [];
  const hub = createIsolatedProbeHub({
    scheduler: systemScheduler,
    startWorker() {
      const worker = forkProbeWorker();
      workers.push(worker);
      return worker;
    },
  });
  const told: string[] = [];
  let readings = 0;
  hub.on('link', ({ state, reason }) => told.push(`${state} ${reason}`));
  hub.on('readings', (heard) => {
    readings += heard.length;
  });
  const signal = (name: NodeJS.Signals) => {
    const id = workers.at(-1)?.processId;
    if (id) process.kill(id, name);
  };
  try {
    const connected = await hub.connect(serialSource(terminal.value.path));
    expect(connected).toMatchObject({ ok: true });
    await until('readings', () => readings > 3, 30);
    signal('SIGKILL');
    await until('the loss and the return', () => told.length === 2, 30);
    signal('SIGSTOP');
    await until('the second loss and return', () => told.length === 4, 30);
    expect({ told, workers: workers.length }).toEqual({
      told: ['lost', 'back', 'lost', 'back'].map((state) => `${state} reader-stopped`),
      workers: 3,
    });
  } finally {
    clearInterval(speaking);
    await hub.close();
    terminal.value.close();
  }
});

test('a serial process whose services were gone before it could listen for them ends without a word', async () => {
  const entry = fileURLToPath(new URL('../../../../main/probe/worker/entry.ts', import.meta.url));
  const starter = `
    const { fork } = require('node:child_process');
    const started = fork(${JSON.stringify(entry)}, { execArgv: ['--import', 'tsx'] });
    started.once('spawn', () => process.exit(0));
  `;
  const services = spawn(process.execPath, ['--eval', starter], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  // Closed by the last of the two.
  const said = text(services.stderr);
  await once(services, 'exit');
  expect(await said).toBe('');
}, 60_000);
