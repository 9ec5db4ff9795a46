/**
 * The whole way of a reading for a long time: four channels over a real pseudo-terminal into the serial process, through
 * the services into the record on a real disk. Says every minute what it costs, and at the end whether every reading
 * that was sent is in the record.
 *
 * Usage: npx tsx scripts/soak.ts [MINUTES = 30] [LINES_PER_S = 100]
 *
 * With --goes-on, the same of one run whose program is killed once a minute or so, at any moment, and gone on with.
 */
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { createSession, systemClock } from '#main';
import { createMonitor, defaultRunSettings } from '#shared-core';
import { goingOnWords, measureGoingOn } from './gaps/run-that-goes-on.ts';
import { cpuSecondsOf, residentMbOf } from './measuring/process-cost.ts';
import { readWholeRun } from './measuring/recorded-run.ts';
import { startSoakedProbe } from './soak/soaked-probe.ts';

const isGoneOnWith = process.argv.includes('--goes-on');
const [minutes = '30', pace = '100'] = process.argv.slice(2).filter((word) => word !== '--goes-on');
const runsFolder = mkdtempSync(path.join(tmpdir(), 'still-head-soak-'));
try {
  await (isGoneOnWith ? soakKilled() : soakOne());
} finally {
  rmSync(runsFolder, { recursive: true });
}

async function soakKilled(): Promise<void> {
  const livesS: number[] = [];
  for (let leftS = 60 * Number(minutes); leftS > 0; leftS -= livesS.at(-1) ?? leftS) {
    livesS.push(Math.min(leftS, 20 + 80 * Math.random()));
  }
  const plan = {
    linesPerS: Number(pace),
    livesS,
    killedAfterS: () => 0.1 * Math.random(),
    onLife: console.log,
  };
  console.log(goingOnWords(await measureGoingOn(runsFolder, plan)));
}

async function soakOne(): Promise<void> {
  const { speaker, probeHub, source, processId } = await startSoakedProbe(pace);
  const session = await createSession({
    probeHub,
    clock: systemClock,
    createMonitor,
    runsFolder,
    app: { version: 'soak', modelVersion: 'soak', shell: 'loopback' },
  });
  const teacher = { mayCommand: true };
  const connected = await session.handle('probe/connect', { source }, teacher);
  if (!connected.ok) throw new Error(JSON.stringify(connected.error));
  const started = await session.handle('run/start', { settings: defaultRunSettings }, teacher);
  if (!started.ok) throw new Error(JSON.stringify(started.error));
  const { runId } = started.value as { runId: string };
  const startS = systemClock.monotonicS();
  await pause(2000);
  const serialId = processId();
  let largestLagS = 0;
  speaker.begin();

  const lagTimer = setInterval(() => {
    const { savedToS } = session.recordingStatus();
    // Before anything came there was nothing to save.
    if (savedToS === null || savedToS === 0) return;
    largestLagS = Math.max(largestLagS, systemClock.monotonicS() - startS - savedToS);
  }, 100);

  for (let minute = 1; minute <= Number(minutes); minute += 1) {
    const cpu = process.cpuUsage();
    const serialCpuS = cpuSecondsOf(serialId);
    await pause(60_000);
    const used = process.cpuUsage(cpu);
    const services = (used.user + used.system) / 1e6;
    const fileMb = statSync(path.join(runsFolder, runId, 'run.jsonl')).size / 1e6;
    console.log(
      `minute ${minute}: services ${share(services)} of one core, ${residentMbOf(process.pid)} MB; ` +
        `serial process ${share(cpuSecondsOf(serialId) - serialCpuS)}, ${residentMbOf(serialId)} MB; log ${fileMb.toFixed(1)} MB`,
    );
  }
  const sent = await speaker.end();
  await pause(3000);
  clearInterval(lagTimer);
  const { droppedReadings, rejectedLines } = probeHub.status();
  await session.handle('run/stop', {}, teacher);
  await session.close();
  console.log(
    `${sent} lines sent; on record ${await recorded()}; dropped ${droppedReadings ?? 0}, not understood ${rejectedLines}; longest time unsaved ${largestLagS.toFixed(2)} s`,
  );

  /** Readings of each channel, read back from the disk by the library. */
  async function recorded(): Promise<string> {
    const { inputs, summary } = await readWholeRun(runsFolder, runId);
    const counts = new Map<string, number>();
    for (const input of inputs) {
      if (input.kind !== 'reading') continue;
      counts.set(input.channel, (counts.get(input.channel) ?? 0) + 1);
    }
    const told = [...counts].map(([channel, count]) => `${channel} ${count}`).join(', ');
    return `${told}, ${summary.damagedRecords} damaged`;
  }
}

function share(usedS: number): string {
  return `${((100 * usedS) / 60).toFixed(1)} %`;
}
