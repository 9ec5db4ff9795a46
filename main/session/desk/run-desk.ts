import { constants, setPriority } from 'node:os';
import process from 'node:process';
import { systemClock } from '../../clock/index.ts';
import { nodeFileLayer } from '../../file-layer/index.ts';
import { portToStarter } from '../../side-process/index.ts';
import { serveDesk } from './serve-desk.ts';

/** Makes this process the one that goes through whole runs, for whatever started it. */
export function runDesk(): void {
  try {
    // Whoever waits here waits for seconds anyway; the record, the clock and the window go first.
    setPriority(constants.priority.PRIORITY_BELOW_NORMAL);
  } catch {
    // Refused: nothing is lost but the wish.
  }
  // The services are gone, and a system call that never returns must not keep this one.
  const end = () => process.kill(process.pid, 'SIGKILL');
  process.on('disconnect', end);
  // Gone before this one could listen for it: that is told to nobody any more.
  if (process.connected === false) end();
  // Ctrl+C in a terminal goes to every process of the group; the services end this one in order.
  process.on('SIGINT', () => {});
  serveDesk({
    port: portToStarter(),
    clock: systemClock,
    files: nodeFileLayer,
    exit: () => process.exit(0),
  });
}
