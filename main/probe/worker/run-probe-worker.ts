import process from 'node:process';
import { systemClock, systemScheduler } from '../../clock/index.ts';
import { portToStarter } from '../../side-process/index.ts';
import { createProbeHub } from '../create-probe-hub.ts';
import { askForTurns } from './ask-for-turns.ts';
import { serveProbeWorker } from './serve-probe-worker.ts';

/** Makes this process the one that reads serial ports, for whatever started it. */
export function runProbeWorker(): void {
  askForTurns();
  const exit = () => process.exit(0);
  // The services are gone: nobody is left to hear anything.
  process.on('disconnect', exit);
  // Gone before this one could listen for it: that is told to nobody any more.
  if (process.connected === false) exit();
  // Ctrl+C in a terminal goes to every process of the group; the services end this one in order.
  process.on('SIGINT', () => {});
  serveProbeWorker({
    port: portToStarter(),
    hub: createProbeHub({ clock: systemClock }),
    clock: systemClock,
    scheduler: systemScheduler,
    exit,
  });
}
