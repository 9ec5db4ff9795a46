import type { UtilityProcess } from 'electron';
import type { SideProcess } from '#main';

/** What of Electron's utility process is used, so that tests can stand in for it. */
export type UtilityChild = Pick<UtilityProcess, 'pid' | 'postMessage' | 'kill'> & {
  on(name: 'message', listener: (message: unknown) => void): unknown;
  once(name: 'exit', listener: () => void): unknown;
};

/** A process beside the services hosted by Electron: a native module that fails there takes nothing else along. */
export function utilitySideProcess(child: UtilityChild): SideProcess {
  return {
    processId: child.pid ?? null,
    post: (message) => child.postMessage(message),
    on: (listener) => child.on('message', listener),
    onExit: (listener) => child.once('exit', listener),
    kill: () => child.kill(),
  };
}
