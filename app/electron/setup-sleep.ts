import type { PowerMonitor } from 'electron';

/** Tells the probe hub of sleep, so that the gap is in the record and the port is opened anew. */
export function setupSleep(
  powerMonitor: Pick<PowerMonitor, 'on'>,
  hub: { suspend(): Promise<void>; resume(): Promise<void> },
): void {
  powerMonitor.on('suspend', () => void hub.suspend());
  powerMonitor.on('resume', () => void hub.resume());
}
