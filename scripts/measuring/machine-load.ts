import { readFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import { quantile } from './quantile.ts';

/** What else the computer did meanwhile, so that figures taken on a shared one can be read. */
export interface MachineLoad {
  /** Ends the watch and says it in one line. */
  report(): string;
}

const timerMs = 10;

/** Watches how late a plain timer of this nearly idle process fires, and the processors' own counters. */
export function watchMachineLoad(): MachineLoad {
  const lateMs: number[] = [];
  const before = processorTimes();
  let dueMs = performance.now() + timerMs;
  const timer = setInterval(() => {
    const nowMs = performance.now();
    lateMs.push(Math.max(0, nowMs - dueMs));
    dueMs = nowMs + timerMs;
  }, timerMs);
  return {
    report() {
      clearInterval(timer);
      const late = [0.5, 0.95, 0.99].map((share) => quantile(lateMs, share).toFixed(1));
      const load = loadavg().map((value) => value.toFixed(1));
      return (
        `${availableParallelism()} cores, load ${load.join(' ')}${busyWords(before, processorTimes())}; a 10 ms timer ` +
        `of an idle process fired late by ${late.join(' / ')} ms (median / p95 / p99), ` +
        `at worst ${Math.max(...lateMs).toFixed(0)} ms`
      );
    },
  };
}

interface ProcessorTimes {
  readonly all: number;
  readonly idle: number;
  readonly stolen: number;
}

/** From `/proc/stat` (Linux): user nice system idle iowait irq softirq steal …; null elsewhere. */
function processorTimes(): ProcessorTimes | null {
  try {
    const [line = ''] = readFileSync('/proc/stat', 'utf8').split('\n');
    const fields = line.split(/\s+/).slice(1, 9).map(Number);
    const all = fields.reduce((sum, value) => sum + value, 0);
    return { all, idle: (fields[3] ?? 0) + (fields[4] ?? 0), stolen: fields[7] ?? 0 };
  } catch {
    return null;
  }
}

function busyWords(before: ProcessorTimes | null, after: ProcessorTimes | null): string {
  if (before === null || after === null) return '';
  const all = Math.max(1, after.all - before.all);
  const percent = (part: number) => `${((100 * part) / all).toFixed(0)} %`;
  const busy = percent(all - (after.idle - before.idle));
  return `, ${busy} busy, ${percent(after.stolen - before.stolen)} stolen by other machines`;
}
