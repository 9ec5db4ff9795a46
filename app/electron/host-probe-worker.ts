import type { ProbeWorker } from '#main';

/** The part of Electron's utility process that is used here. */
export interface UtilityChild {
  readonly pid: number | undefined;
  postMessage(message: unknown): void;
  on(name: 'message', listener: (message: unknown) => void): unknown;
  once(name: 'exit', listener: () => void): unknown;
  kill(): boolean;
}

/** A utility process in the shape the services know: serial work that can only fail alone. */
export function hostProbeWorker(child: UtilityChild): ProbeWorker {
  return {
    get processId() {
      return child.pid ?? null;
    },
    post: (message) => child.postMessage(message),
    on: (listener) => void child.on('message', listener),
    onExit: (listener) => void child.once('exit', listener),
    kill: () => void child.kill(),
  };
}
