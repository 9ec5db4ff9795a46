import process from 'node:process';
import { systemClock, systemScheduler } from '../../clock/index.ts';
import { createProbeHub } from '../create-probe-hub.ts';
import { askForTurns } from './ask-for-turns.ts';
import { serveProbeWorker } from './serve-probe-worker.ts';
import type { WorkerPort } from './worker-port.ts';

/** What Electron gives a utility process instead of Node's own channel. */
interface ParentPort {
  postMessage(message: unknown): void;
  on(name: 'message', listener: (event: { readonly data: unknown }) => void): void;
}

/** Makes this process the one that reads serial ports, for whatever started it. */
export function runProbeWorker(): void {
  askForTurns();
  const exit = () => process.exit(0);
  // The services are gone: nobody is left to hear anything.
  process.on('disconnect', exit);
  // Ctrl+C in a terminal goes to every process of the group; the services end this one in order.
  process.on('SIGINT', () => {});
  serveProbeWorker({
    port: portToServices(),
    hub: createProbeHub({ clock: systemClock }),
    clock: systemClock,
    scheduler: systemScheduler,
    exit,
  });
}

function portToServices(): WorkerPort {
  if ('parentPort' in process && process.parentPort) {
    const port = process.parentPort as ParentPort;
    return {
      post: (message) => port.postMessage(message),
      on: (listener) => port.on('message', ({ data }) => listener(data)),
    };
  }
  return {
    post: (message) => process.send?.(message),
    on: (listener) => process.on('message', listener),
  };
}
