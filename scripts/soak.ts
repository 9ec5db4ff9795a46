/**
 * Records four channels at a high rate in real time and says what it cost: processor share, memory,
 * file size, and whether every reading is in the record.
 *
 * Usage: npx tsx scripts/soak.ts [MINUTES (30)] [READINGS A SECOND AND CHANNEL (100)]
 */
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { createRunLibrary, createSession, nodeFileLayer, systemClock } from '#main';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { createSteadyProbe } from './soak/steady-probe.ts';

const [minutes = '30', ratePerS = '100'] = process.argv.slice(2);
const runsFolder = mkdtempSync(path.join(tmpdir(), 'still-head-soak-'));
const probeHub = createSteadyProbe(Number(ratePerS));
const session = await createSession({
  probeHub,
  clock: systemClock,
  createMonitor,
  runsFolder,
  app: { version: 'soak', modelVersion: 'soak', shell: 'loopback' },
});
const teacher = { mayCommand: true };
let delivered = 0;
let largestLagS = 0;
session.on('inputs', ({ inputs }) => {
  delivered += inputs.length;
});
const started = await session.handle('run/start', { settings: defaultRunSettings }, teacher);
if (!started.ok) throw new Error(JSON.stringify(started.error));
const { runId } = started.value as { runId: string };
const sentBefore = probeHub.sent();
const startS = systemClock.monotonicS();

const lagTimer = setInterval(() => {
  const { savedToS } = session.recordingStatus();
  largestLagS = Math.max(largestLagS, systemClock.monotonicS() - startS - (savedToS ?? 0));
}, 100);

function report(minute: number, cpu: NodeJS.CpuUsage): void {
  const share = ((cpu.user + cpu.system) / 60e6) * 100;
  const residentMb = process.memoryUsage().rss / 1e6;
  const fileMb = statSync(path.join(runsFolder, runId, 'run.jsonl')).size / 1e6;
  console.log(
    `minute ${minute}: ${share.toFixed(1)} % of one core, ${residentMb.toFixed(0)} MB resident, ` +
      `log ${fileMb.toFixed(1)} MB, ${probeHub.sent() - sentBefore} readings sent, ${delivered} delivered`,
  );
}

/** Every channel came at a steady rate, so the times in the record show any reading that is not there. */
async function missingIn(run: string): Promise<string> {
  const files = nodeFileLayer;
  const library = createRunLibrary({
    files,
    clock: systemClock,
    runsFolder,
    mayWrite: () => false,
  });
  const whole = await library.whole(run);
  await library.close();
  if (!whole.ok) return JSON.stringify(whole.error);
  const heads = whole.value.inputs.filter(
    (input) => input.kind === 'reading' && input.channel === 'head',
  );
  const spanS = (heads.at(-1)?.timeS ?? 0) - (heads[0]?.timeS ?? 0);
  const expected = (Math.round(spanS * Number(ratePerS)) + 1) * 4;
  const { readings, damagedRecords } = whole.value.summary;
  return (
    `${readings} recorded, ${expected - readings} missing between the first and the last, ` +
    `${damagedRecords} damaged (a round taken before the start belongs to no run)`
  );
}

for (let minute = 1; minute <= Number(minutes); minute += 1) {
  const before = process.cpuUsage();
  await new Promise((resolve) => setTimeout(resolve, 60_000));
  report(minute, process.cpuUsage(before));
}
clearInterval(lagTimer);
await probeHub.close();
const sent = probeHub.sent() - sentBefore;
await session.handle('run/stop', {}, teacher);
await session.close();
console.log(`longest time unsaved: ${largestLagS.toFixed(2)} s; ${sent} readings sent`);
console.log(await missingIn(runId));
rmSync(runsFolder, { recursive: true });
