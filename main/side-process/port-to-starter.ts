import process from 'node:process';
import type { SidePort } from './side-process.ts';

/** What Electron gives a utility process instead of Node's own channel. */
interface ParentPort {
  postMessage(message: unknown): void;
  on(name: 'message', listener: (event: { readonly data: unknown }) => void): void;
}

/** From within a process beside the services: the wire to whatever started it. */
export function portToStarter(): SidePort {
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
