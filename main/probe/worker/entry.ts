/** Entry of the process that reads serial ports; started by the services, never by hand. */
import process from 'node:process';
import { systemClock, systemScheduler } from '../../clock/index.ts';
import { createProbeHub } from '../create-probe-hub.ts';
import { serveProbeWorker } from './serve-probe-worker.ts';
import type { WorkerPort } from './worker-port.ts';

/** What Electron gives a utility process instead of Node's own channel. */
interface ParentPort {
  postMessage(message: unknown): void;
  on(name: 'message', listener: (event: { readonly data: unknown }) => void): void;
}

const parentPort = 'parentPort' in process ? (process.parentPort as ParentPort) : null;

const port: WorkerPort =
  parentPort === null
    ? {
        post: (message) => process.send?.(message),
        on: (listener) => process.on('message', listener),
      }
    : {
        post: (message) => parentPort.postMessage(message),
        on: (listener) => parentPort.on('message', ({ data }) => listener(data)),
      };

const exit = () => process.exit(0);
// The services are gone: nobody is left to hear anything.
process.on('disconnect', exit);
// A key stroke in the terminal goes to every process of the group; the services end this one in order.
process.on('SIGINT', () => {});

serveProbeWorker({
  port,
  hub: createProbeHub({ clock: systemClock }),
  clock: systemClock,
  scheduler: systemScheduler,
  exit,
});
