import type { PowerMonitor } from 'electron';

/** Tells the services of sleep, so that the gap is in the record and the port is opened anew. */
export function setupSleep(
  powerMonitor: Pick<PowerMonitor, 'on'>,
  services: { suspend(): Promise<void>; resume(): Promise<void> },
): void {
  powerMonitor.on('suspend', () => void services.suspend());
  powerMonitor.on('resume', () => void services.resume());
}
