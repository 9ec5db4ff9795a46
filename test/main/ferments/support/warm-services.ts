/**
 * The services with a week that passes fast: connects to the port and keeps a ferment warm, or goes on by itself where one was kept;
 * says on its standard output what it tells windows; ends at the first line of its standard input.
 *
 * Usage: node warm-services.mjs RUNS_FOLDER PORT SPEED BEGAN_MS
 */
import process from 'node:process';
import { createInterface } from 'node:readline';
import { createProbeHub, createSession, type Scheduler, systemClock, systemScheduler } from '#main';
import {
  createMonitor,
  type RequestBody,
  type RequestName,
  serialSourceSchema,
  usualWarmthBand,
} from '#shared-core';

const [runsFolder = '', port = '', speedText = '', beganText = ''] = process.argv.slice(2);
const speed = Number(speedText);
const beganMs = Number(beganText);
/** Timers can't follow such a speed: what is looked at every few seconds is looked at as often as they can. */
const leastS = 0.02;
const fast = (seconds: number) => Math.max(leastS, seconds / speed);
const scheduler: Scheduler = {
  every: (periodS, act) => systemScheduler.every(fast(periodS), act),
  after: (delayS, act) => systemScheduler.after(fast(delayS), act),
};
const probeHub = createProbeHub({ clock: systemClock });
const session = await createSession({
  probeHub,
  clock: {
    monotonicS: systemClock.monotonicS,
    wallMs: () => beganMs + speed * (systemClock.wallMs() - beganMs),
  },
  scheduler,
  createMonitor,
  runsFolder,
  app: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
});
session.on('warmth', ({ kept }) => console.log(JSON.stringify(kept?.now ?? null)));

async function ask<N extends RequestName>(name: N, body: RequestBody<N>): Promise<unknown> {
  const answer = await session.handle(name, body, { mayCommand: true });
  if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer.error)}`);
  return answer.value;
}

const { ferments } = (await ask('ferments/list', {})) as { ferments: readonly unknown[] };
if (ferments.length === 0) {
  const source = serialSourceSchema.parse({ kind: 'serial', path: port, language: 'json-lines' });
  await ask('probe/connect', { source });
  const { fermentId } = (await ask('ferments/begin', {
    stated: {
      name: 'Pear juice',
      beganAtIso: new Date(beganMs).toISOString(),
      volumeMl: 1000,
      sugarG: null,
      wentIn: '',
    },
  })) as { fermentId: string };
  await ask('warmth/keep', { fermentId, band: usualWarmthBand, channel: 'ferment' });
}
createInterface({ input: process.stdin }).once('line', () => {
  void session.close().then(() => {
    console.log(JSON.stringify({ heapMB: process.memoryUsage().heapUsed / 2 ** 20 }));
    process.exit(0);
  });
});
