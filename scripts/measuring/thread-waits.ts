import { readFileSync } from 'node:fs';

/** How long a thread ran, and how long it was ready to run but waited for a core. */
export interface CoreTime {
  readonly ranMs: number;
  readonly waitedMs: number;
}

/** What the main thread of a process got of the processors, sampled. */
export interface ThreadWaits {
  /** Between two times of this process [ms]; null where the system does not tell. */
  between(fromMs: number, toMs: number): CoreTime | null;
  stop(): void;
}

interface Sample extends CoreTime {
  readonly atMs: number;
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
