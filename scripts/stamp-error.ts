/**
 * How far the moments that the serial process gives to lines lie from the moments at which they were written: a counting probe over a
 * real pseudo-terminal, beside as many busy loops as asked for. What the writer cannot tell of its own moment is said beside it.
 *
 * Usage: npx tsx scripts/stamp-error.ts [SECONDS] [BUSY-LOOPS]
 */
import { fork } from 'node:child_process';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { createIsolatedProbeHub, forkProbeWorker, systemScheduler } from '#main';
import { serialSourceSchema } from '#shared-core';
import { linesPerKelvin, startCountingProbe } from './attack/counting-probe.ts';
import { quantile } from './measuring/quantile.ts';

const [seconds = 60, busyLoops = 0] = process.argv.slice(2).map(Number);
const linesPerS = 20;
const settleS = 3;

const busy = Array.from({ length: busyLoops }, () =>
  fork(new URL('./measuring/busy-loop.mjs', import.meta.url)),
);
const probe = startCountingProbe(linesPerS);
const hub = createIsolatedProbeHub({
  scheduler: systemScheduler,
  startWorker: () => forkProbeWorker(),
});
const heardS = new Map<number, number>();
hub.on('readings', (readings) => {
  for (const { atS, value } of readings) heardS.set(Math.round(value * linesPerKelvin), atS);
});
try {
  const connected = await hub.connect(
    serialSourceSchema.parse({ kind: 'serial', path: probe.path, language: 'plain-text' }),
  );
  if (!connected.ok) throw new Error(connected.error.kind);
  await pause(1000 * settleS);
  const from = probe.writtenS.length;
  await pause(1000 * seconds);
  const to = probe.writtenS.length;
  await pause(1000);
  const lateMs: number[] = [];
  const unsureMs: number[] = [];
  /** Later than the writer's own moment can explain. */
  const surelyLateMs: number[] = [];
  for (let line = from; line < to; line += 1) {
    const atS = heardS.get(line) ?? Number.NaN;
    lateMs.push(1000 * (atS - (probe.begunS[line] ?? Number.NaN)));
    surelyLateMs.push(Math.max(0, 1000 * (atS - (probe.writtenS[line] ?? Number.NaN))));
    unsureMs.push(1000 * ((probe.writtenS[line] ?? 0) - (probe.begunS[line] ?? 0)));
  }
  const inMs = (values: readonly number[], share: number) => quantile(values, share).toFixed(1);
  console.log(
    `${to - from} lines beside ${busyLoops} busy loops: stamps late by ${inMs(lateMs, 0.5)} ms (median), ` +
      `${inMs(lateMs, 0.99)} ms (99 %), ${inMs(lateMs, 1)} ms (worst); ` +
      `the writer is unsure of ${inMs(unsureMs, 1)} ms at most; surely late ${inMs(surelyLateMs, 0.99)} ms (99 %), ` +
      `${inMs(surelyLateMs, 1)} ms (worst); ${lateMs.filter(Number.isNaN).length} lost`,
  );
} finally {
  await hub.close();
  probe.close();
  for (const loop of busy) loop.kill();
}
