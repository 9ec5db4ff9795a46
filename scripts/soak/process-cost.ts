import { readFileSync } from 'node:fs';

/** Processor seconds a process has used; Linux only, zero elsewhere. Fields 14 and 15 of /proc/PID/stat, in hundredths. */
export function cpuSecondsOf(processId: number | null): number {
  try {
    const stat = readFileSync(`/proc/${processId}/stat`, 'utf8');
    const fields = stat.split(') ')[1]?.split(' ') ?? [];
    return (Number(fields[11]) + Number(fields[12])) / 100;
  } catch {
    return 0;
  }
}

/** Resident memory of a process [MB]; Linux only, zero elsewhere. */
export function residentMbOf(processId: number | null): number {
  try {
    const status = readFileSync(`/proc/${processId}/status`, 'utf8');
    return Math.round(Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024);
  } catch {
    return 0;
  }
}
