import { readFileSync } from 'node:fs';

/**
 * Processor seconds a process has used; Linux only, zero elsewhere and for a process that has ended.
 *
 * Source: Linux man-pages, proc_pid_stat(5): utime and stime, in ticks of 10 ms.
 */
export function cpuSecondsOf(processId: number | null): number {
  const [, fields = ''] = read(processId, 'stat').split(') ');
  const [utime = 0, stime = 0] = fields.split(' ').slice(11, 13).map(Number);
  return (utime + stime) / 100;
}

/**
 * Resident memory of a process [bytes]; Linux only, zero elsewhere and for a process that has ended.
 *
 * Source: Linux man-pages, proc_pid_status(5).
 */
export function residentBytesOf(processId: number | null): number {
  return 1024 * Number(/^VmRSS:\s+(\d+) kB$/m.exec(read(processId, 'status'))?.[1] ?? 0);
}

/** The same in whole megabytes of 1024². */
export function residentMbOf(processId: number | null): number {
  return Math.round(residentBytesOf(processId) / 2 ** 20);
}

/** The processes that a process started. */
export function childrenOf(processId: number): readonly number[] {
  return (read(processId, `task/${processId}/children`).match(/\d+/g) ?? []).map(Number);
}

function read(processId: number | null, what: string): string {
  try {
    return readFileSync(`/proc/${processId}/${what}`, 'latin1');
  } catch {
    return '';
  }
}
