/**
 * The services of a ferment that is kept warm, in a process that may be killed: they go on by themselves. Says on its standard output
 * what is heard, how long the opening took, and its memory each half minute; ends at the first line of its standard input.
 *
 * Usage: node --expose-gc --import tsx scripts/soak/warm-services.ts RUNS_FOLDER
 */
import process from 'node:process';
import { createInterface } from 'node:readline';
import { createProbeHub, createSession, systemClock, systemScheduler } from '#main';
import { createMonitor } from '#shared-core';
import { fermentId } from './week-before.ts';

const [runsFolder = ''] = process.argv.slice(2);
const memoryEveryS = 30;
const mega = 2 ** 20;
const say = (what: object) => console.log(JSON.stringify(what));

const openedS = systemClock.monotonicS();
const probeHub = createProbeHub({ clock: systemClock });
probeHub.on('readings', (readings) => {
  const nowMs = systemClock.wallMs();
  const nowS = systemClock.monotonicS();
  for (const { atS, channel, value } of readings) {
    if (channel === 'ferment') say({ atMs: nowMs - 1000 * (nowS - atS), temperatureC: value });
  }
});
const session = await createSession({
  probeHub,
  clock: systemClock,
  scheduler: systemScheduler,
  createMonitor,
  runsFolder,
  app: { version: '0.1.0', modelVersion: '1', shell: 'loopback' },
});
const reported = await session.handle('warmth/report', { fermentId }, { mayCommand: false });
if (!reported.ok) throw new Error(reported.error.kind);
say({ openedMs: Math.round(1000 * (systemClock.monotonicS() - openedS)) });
systemScheduler.every(memoryEveryS, () => {
  globalThis.gc?.();
  const { heapUsed, rss } = process.memoryUsage();
  say({ heapMB: Math.round((10 * heapUsed) / mega) / 10, rssMB: Math.round(rss / mega) });
});
createInterface({ input: process.stdin }).once('line', () => {
  void session.close().then(() => process.exit(0));
});
