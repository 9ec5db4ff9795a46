import process from 'node:process';
import type { SidePort } from './side-process.ts';

/** What Electron gives a utility process instead of Node's own channel. */
interface ParentPort {
  postMessage(message: unknown): void;
  on(name: 'message', listener: (event: { readonly data: unknown }) => void): unknown;
}

/** This process, as far as it was started by another. */
export interface StartedProcess {
  readonly parentPort?: ParentPort | null;
  send?(message: unknown, done?: (error: Error | null) => void): unknown;
  on(name: 'message', listener: (message: unknown) => void): unknown;
}

/** From within a process beside the services: the wire to whatever started it. */
export function portToStarter(started: StartedProcess = process): SidePort {
  const port = started.parentPort;
  if (port) {
    return {
      post: (message) => port.postMessage(message),
      on: (listener) => port.on('message', ({ data }) => listener(data)),
    };
  }
  return {
    // Where the other side has gone, `disconnect` says so; what is written until then is for nobody, and no failure of this process.
    post: (message) => started.send?.(message, () => undefined),
    on: (listener) => started.on('message', listener),
  };
}
