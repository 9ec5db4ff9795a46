/**
 * A ferment kept warm at the pace of the clock, over a real pseudo-terminal: the services are killed twice and the plug is pulled once,
 * then every minute on the disk is held against what was heard of it.
 *
 * Usage: npx tsx scripts/soak-warmth.ts [MINUTES = 30]
 *
 * Before it begins a week of minutes lies on the disk, so that opening and memory are those of a week's end. Prints what was heard,
 * which readings of more than a second before a kill are missing, how long each opening took, and memory as it went.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { openPseudoTerminal } from '#main';
import { warmthOfText } from '../main/ferments/warmth-lines.ts';
import { fermentId, writeWeekBefore } from './soak/week-before.ts';

const [minutesText = '30'] = process.argv.slice(2);
const minutes = Number(minutesText);
const minuteMs = 60_000;
/** What was heard so shortly before a loss of power may not have come to the disk. */
const mostLostMs = 1000;
/** Each reading is warmer than the one before: which came to the disk can be told by the ends of each minute. */
const stepC = 0.0005;
const firstC = 28;
const program = fileURLToPath(new URL('soak/warm-services.ts', import.meta.url));

interface Heard {
  readonly atMs: number;
  readonly temperatureC: number;
}
interface Opening {
  readonly openedMs: number;
}
interface Memory {
  readonly heapMB: number;
  readonly rssMB: number;
}

const folder = mkdtempSync(path.join(tmpdir(), 'soak-warmth-'));
const port = path.join(folder, 'port');
const runsFolder = path.join(folder, 'runs');
const heard: Heard[] = [];
const openings: number[] = [];
const memory: Memory[] = [];
const kills: number[] = [];
type Terminal = Extract<ReturnType<typeof openPseudoTerminal>, { ok: true }>['value'];
let terminal: Terminal | null = null;
let temperatureC = firstC;

function plugIn(): void {
  const opened = openPseudoTerminal();
  if (!opened.ok) throw new Error(opened.error);
  terminal = opened.value;
  symlinkSync(terminal.path, port);
}

function unplug(): void {
  rmSync(port, { force: true });
  terminal?.close();
  terminal = null;
}

function start() {
  const child = spawn(
    process.execPath,
    ['--expose-gc', '--import', 'tsx', program, runsFolder, port],
    { stdio: ['pipe', 'pipe', 'inherit'] },
  );
  createInterface({ input: child.stdout }).on('line', (line) => {
    const said: Partial<Heard & Opening & Memory> = JSON.parse(line);
    const { atMs, temperatureC: value, openedMs, heapMB, rssMB } = said;
    if (atMs !== undefined && value !== undefined) heard.push({ atMs, temperatureC: value });
    if (openedMs !== undefined) openings.push(openedMs);
    if (heapMB !== undefined && rssMB !== undefined) memory.push({ heapMB, rssMB });
  });
  const closed = new Promise((resolve) => child.once('close', resolve));
  return {
    kill: () => {
      kills.push(Date.now());
      child.kill('SIGKILL');
      return closed;
    },
    stop: () => {
      child.stdin.write('stop\n');
      return closed;
    },
  };
}

const beginningOf = (atMs: number) => Math.floor(atMs / minuteMs) * minuteMs;

const wait = (share: number) =>
  new Promise((resolve) => setTimeout(resolve, share * minutes * minuteMs));

writeWeekBefore(runsFolder, port, Date.now());
plugIn();
const speaking = setInterval(() => {
  temperatureC += stepC;
  terminal?.write(Buffer.from(`{"ferment":${temperatureC.toFixed(4)}}\n`));
}, 1000);
let services = start();
await wait(0.3);
await services.kill();
services = start();
await wait(0.2);
unplug();
await wait(0.1);
plugIn();
await wait(0.15);
await services.kill();
services = start();
await wait(0.25);
await services.stop();
clearInterval(speaking);
unplug();

const text = readFileSync(path.join(runsFolder, `warmth-${fermentId}.jsonl`), 'utf8');
const underWay: { atIso: string; lowC: number; meanC: number; highC: number } = JSON.parse(
  readFileSync(path.join(runsFolder, `warmth-${fermentId}.minute.json`), 'utf8'),
);
const recorded = new Map(
  [underWay, ...warmthOfText(text).minutes].map((minute) => [Date.parse(minute.atIso), minute]),
);
const isSpared = ({ atMs }: Heard) =>
  !kills.some((killMs) => atMs <= killMs && killMs - atMs < mostLostMs);
const roundingC = 0.0006;
const borderMs = 20;
const lost = heard.filter(isSpared).filter(({ atMs, temperatureC: value }) => {
  // Two clocks are read one after the other: on the border of two minutes it may be either.
  const begins = [-borderMs, borderMs].map((by) => beginningOf(atMs + by));
  return !begins.some((beginsMs) => {
    const minute = recorded.get(beginsMs);
    return (
      minute !== undefined && value >= minute.lowC - roundingC && value <= minute.highC + roundingC
    );
  });
});
const byMinute = new Map<number, Heard[]>();
for (const one of heard) {
  const beginsMs = beginningOf(one.atMs);
  byMinute.set(beginsMs, [...(byMinute.get(beginsMs) ?? []), one]);
}
const meanErrorsC = [...byMinute].flatMap(([beginsMs, of]) => {
  const minute = recorded.get(beginsMs);
  const wasKilled = kills.some((killMs) => killMs >= beginsMs && killMs < beginsMs + minuteMs);
  const mean = of.reduce((sum, one) => sum + one.temperatureC, 0) / of.length;
  return minute === undefined || wasKilled ? [] : [Math.abs(minute.meanC - mean)];
});
const half = Math.floor(memory.length / 2);
console.log(
  JSON.stringify({
    minutes,
    kills: kills.length,
    heard: heard.length,
    minutesHeard: byMinute.size,
    lostBeyondOneSecond: lost.length,
    largestMeanErrorC: Math.max(...meanErrorsC),
    openedMs: openings,
    heapMB: { atHalf: memory[half]?.heapMB, atEnd: memory.at(-1)?.heapMB },
    rssMB: { atHalf: memory[half]?.rssMB, atEnd: memory.at(-1)?.rssMB },
  }),
);
rmSync(folder, { recursive: true });
process.exitCode = lost.length === 0 ? 0 : 1;
