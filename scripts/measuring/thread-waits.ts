import { readFileSync } from 'node:fs';

/** What the main thread of a process got of the processors, sampled; empty where the system does not tell. */
export interface ThreadWaits {
  /** Between two times [ms]: how long the thread ran and how long it was ready but waited for a core. */
  between(
    fromMs: number,
    toMs: number,
  ): { readonly ranMs: number; readonly waitedMs: number } | null;
  stop(): void;
}

interface Sample {
  readonly atMs: number;
  readonly ranMs: number;
  readonly waitedMs: number;
}

const everyMs = 10;

/** `/proc/PID/schedstat` (Linux): nanoseconds on a core, nanoseconds ready and waiting for one. */
export function watchThreadWaits(pid: number): ThreadWaits {
  const samples: Sample[] = [];
  const timer = setInterval(() => {
    try {
      const [ran = 0, waited = 0] = readFileSync(`/proc/${pid}/schedstat`, 'utf8')
        .split(' ')
        .map(Number);
      samples.push({ atMs: performance.now(), ranMs: ran / 1e6, waitedMs: waited / 1e6 });
    } catch {
      clearInterval(timer);
    }
  }, everyMs);
  return {
    between(fromMs, toMs) {
      const first = samples.findLast(({ atMs }) => atMs <= fromMs) ?? samples[0];
      const last = samples.find(({ atMs }) => atMs >= toMs) ?? samples.at(-1);
      if (!first || !last) return null;
      return { ranMs: last.ranMs - first.ranMs, waitedMs: last.waitedMs - first.waitedMs };
    },
    stop: () => clearInterval(timer),
  };
}
