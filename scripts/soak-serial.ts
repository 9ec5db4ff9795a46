/**
 * Four channels over a real pseudo-terminal into the serial process, counted at both ends.
 *
 * Usage: npx tsx scripts/soak-serial.ts [SECONDS = 60] [LINES_PER_S = 100, or "flood"]
 *
 * Prints lines sent and heard, what was dropped, CPU share and memory of this process (which stands for
 * everything that must not suffer) and of the serial process, and how long this process was ever kept waiting.
 */
import { monitorEventLoopDelay } from 'node:perf_hooks';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';
import { cpuSecondsOf, residentMbOf } from './measuring/process-cost.ts';
import { startSoakedProbe } from './soak/soaked-probe.ts';

const [seconds = '60', pace = '100'] = process.argv.slice(2);
await soak(Number(seconds));

async function soak(forS: number): Promise<void> {
  const { speaker, probeHub: hub, source, processId } = await startSoakedProbe(pace);
  const heard = new Map<string, number>();
  hub.on('readings', (readings) => {
    for (const { channel } of readings) heard.set(channel, (heard.get(channel) ?? 0) + 1);
  });
  const links: string[] = [];
  hub.on('link', ({ state, reason }) => links.push(`${state} ${reason}`));
  await hub.connect(source);
  await pause(1000);

  const delay = monitorEventLoopDelay({ resolution: 5 });
  delay.enable();
  const cpu = process.cpuUsage();
  const id = processId();
  const workerCpuS = cpuSecondsOf(id);
  speaker.begin();
  await pause(1000 * forS);
  const sent = await speaker.end();
  await pause(3000);
  const used = process.cpuUsage(cpu);
  const { droppedReadings, rejectedLines } = hub.status();
  console.log(
    JSON.stringify({
      linesSent: sent,
      heard: Object.fromEntries(heard),
      links,
      droppedReadings,
      rejectedLines,
      servicesCpuPercent: percent((used.user + used.system) / 1e6, forS + 3),
      serialCpuPercent: percent(cpuSecondsOf(id) - workerCpuS, forS + 3),
      servicesMb: residentMbOf(process.pid),
      serialMb: residentMbOf(id),
      longestDelayMs: Math.round(delay.max / 1e6),
    }),
  );
  await hub.close();
}

function percent(usedS: number, ofS: number): number {
  return Math.round((1000 * usedS) / ofS) / 10;
}
