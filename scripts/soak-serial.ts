/**
 * Four channels over a real pseudo-terminal into the serial process, counted at both ends.
 *
 * Usage: npx tsx scripts/soak-serial.ts [SECONDS = 60] [LINES_PER_S = 100, or "flood"]
 *
 * Prints lines sent and heard, what was dropped, CPU share and memory of this process (which stands for
 * everything that must not suffer) and of the serial process, and how long this process was ever kept waiting.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import {
  createIsolatedProbeHub,
  forkProbeWorker,
  openPseudoTerminal,
  type ProbeWorker,
  systemClock,
  systemScheduler,
} from '#main';
import { latin1Bytes, serialSourceSchema } from '#shared-core';

const [seconds = '60', pace = '100', role] = process.argv.slice(2);
if (role === 'speak') speak();
else await soak(Number(seconds));

/** The probe's end: numbered lines, so that every missing one is seen. */
function speak(): void {
  const terminal = openPseudoTerminal();
  if (!terminal.ok) throw new Error(terminal.error);
  let sent = 0;
  const line = () => {
    const head = (20 + (sent % 1024) / 16).toFixed(4);
    sent += 1;
    return `head,${head},pot,91.5000,room,20.5000,condenser,18.2500\n`;
  };
  process.on('message', () => {
    const startMs = performance.now();
    const timer = setInterval(() => {
      const due =
        pace === 'flood'
          ? sent + 64
          : Math.floor(((performance.now() - startMs) / 1000) * Number(pace));
      let text = '';
      while (sent < due) text += line();
      if (text !== '') terminal.value.write(latin1Bytes(text));
    }, 1);
    process.once('message', () => {
      clearInterval(timer);
      process.send?.({ sent });
    });
  });
  process.send?.({ path: terminal.value.path });
}

async function soak(forS: number): Promise<void> {
  const speaker = fork(fileURLToPath(import.meta.url), [seconds, pace, 'speak'], {
    execArgv: ['--import', 'tsx'],
  });
  const { path } = await nextMessage<{ path: string }>(speaker);
  let worker: ProbeWorker | null = null;
  const hub = createIsolatedProbeHub({
    clock: systemClock,
    scheduler: systemScheduler,
    startWorker() {
      worker = forkProbeWorker();
      return worker;
    },
  });
  const heard = new Map<string, number>();
  hub.on('readings', (readings) => {
    for (const { channel } of readings) heard.set(channel, (heard.get(channel) ?? 0) + 1);
  });
  const links: string[] = [];
  hub.on('link', ({ state, reason }) => links.push(`${state} ${reason}`));
  await hub.connect(serialSourceSchema.parse({ kind: 'serial', path }));
  await pause(1);

  const delay = monitorEventLoopDelay({ resolution: 5 });
  delay.enable();
  const cpu = process.cpuUsage();
  const id = (worker as ProbeWorker | null)?.processId ?? null;
  const workerCpuS = cpuSecondsOf(id);
  speaker.send('start');
  await pause(forS);
  const sentAnswer = nextMessage<{ sent: number }>(speaker);
  speaker.send('stop');
  const { sent } = await sentAnswer;
  await pause(3);
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
      servicesMb: Math.round(process.memoryUsage().rss / 2 ** 20),
      serialMb: residentMb(id),
      longestDelayMs: Math.round(delay.max / 1e6),
    }),
  );
  await hub.close();
  speaker.kill();
}

function nextMessage<T>(child: ChildProcess): Promise<T> {
  return new Promise((resolve) => child.once('message', (message) => resolve(message as T)));
}

function pause(forS: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 1000 * forS));
}

function percent(usedS: number, ofS: number): number {
  return Math.round((1000 * usedS) / ofS) / 10;
}

/** Linux only; zero elsewhere. Fields 14 and 15 of /proc/PID/stat, in hundredths of a second. */
function cpuSecondsOf(id: number | null): number {
  try {
    const fields = readFileSync(`/proc/${id}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return 0;
  }
}

function residentMb(id: number | null): number {
  try {
    const line = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${id}/status`, 'utf8'))?.[1];
    return Math.round(Number(line) / 1024);
  } catch {
    return 0;
  }
}
