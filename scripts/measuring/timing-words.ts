import { quantile } from './quantile.ts';
import type { LongTask, Timing } from './time-readings.ts';

/** Longest task that a person does not notice, by the definition of the browsers' own observer [ms]. */
const longTaskMs = 50;

/** The figures of a timing, line by line, with what is needed to judge them. */
export function timingWords(timing: Timing): readonly string[] {
  const { forMs, readings, unexplained, longestPauseMs, coreTime, longTasks } = timing;
  const latencies = readings.map(({ sentMs, shownMs }) => shownMs - sentMs);
  const at = (share: number) => quantile(latencies, share).toFixed(0);
  const overtaken = readings.filter((reading) => reading.overtaken).length;
  const share = (partMs: number) => `${((100 * partMs) / forMs).toFixed(1)} %`;
  const busy = longTasks.filter((task) => (task.coreTime?.ranMs ?? 0) > longTaskMs).length;
  return [
    `machine: ${timing.machine}`,
    `byte at the port → pixel: median ${at(0.5)} ms, p95 ${at(0.95)} ms, p99 ${at(0.99)} ms, ` +
      `at worst ${Math.max(...latencies).toFixed(0)} ms; ${readings.length} readings, ` +
      `${overtaken} overtaken by the next, ${unexplained} numbers unexplained, ` +
      `longest pause ${longestPauseMs.toFixed(0)} ms`,
    `  clocks compared to ± ${timing.clockErrorMs.toFixed(2)} ms, ` +
      `${timing.clockDriftMs.toFixed(2)} ms apart at the end; ${timing.framesPerS.toFixed(0)} frames a second`,
    ...(coreTime === null
      ? []
      : [
          `  the page's main thread ran ${share(coreTime.ranMs)} of the time ` +
            `and waited for a core ${share(coreTime.waitedMs)}`,
        ]),
    `main-thread tasks over 50 ms in ${(forMs / 60_000).toFixed(1)} min: ${longTasks.length}` +
      `${coreTime === null ? '' : `, ${busy} of them with that much time on a core`}`,
    ...longTasks.map(taskWords),
  ];
}

function taskWords({ afterMs, durationMs, scripts, coreTime }: LongTask): string {
  const got =
    coreTime === null
      ? ''
      : `, meanwhile ${coreTime.ranMs.toFixed(0)} ms on a core ` +
        `and ${coreTime.waitedMs.toFixed(0)} ms waiting for one`;
  const ran = scripts.length === 0 ? '' : `; ${scripts.join(', ')}`;
  return `  at ${(afterMs / 1000).toFixed(1)} s: ${durationMs.toFixed(0)} ms${got}${ran}`;
}
